import { describe, expect, test } from 'vitest';
import { deltaE00 } from '../../../src/science/colour/delta-e-00';
import type { Lab } from '../../../src/science/colour/lab';
import { afterReading, firstBelief } from '../../../src/science/pigment/belief';
import { mixColour, threeBandModel } from '../../../src/science/pigment/colour-model';
import { added, nearestAddition } from '../../../src/science/pigment/nearest-addition';
import { LACQUER_SURFACE } from '../../../src/science/pigment/saunderson';
import { poured } from '../../../src/science/pigment/suggest';
import { ask, BENCH, BLACK, belief, model, NONE, OCHRE, only, paints, tint, WHITE_JAR } from './earth-bench';
import { EARTHS } from './hidden-pigments';

test('two tinters that are the same colour come as near as one', () => {
  const twice = threeBandModel(
    paints.colour(WHITE_JAR),
    [OCHRE, OCHRE].map((t) => [0.01, 0.05].map((share) => ({ share, lab: paints.colour(tint(t, share)) }))),
    LACQUER_SURFACE,
  );
  const jar = { whiteGrams: 200, tinterGrams: [0, 0] };
  const target = mixColour(twice, { whiteGrams: 200, tinterGrams: [1.5, 0] });
  const addition = nearestAddition(twice, jar, target, [0, 1], false);
  expect(deltaE00(mixColour(twice, added(jar, addition)), target)).toBeLessThan(0.01); // as its docstring says
});

test('a tinter more never leads farther from the target, though nothing of it is wanted', () => {
  for (const target of [WHITE_JAR, tint(BLACK, 0.01), tint(OCHRE, 0.02), tint(5, 0.01), tint(2, 0.02)].map(
    paints.colour,
  ))
    for (const [one] of EARTHS.entries())
      for (const [other] of EARTHS.entries()) {
        if (other === one) continue;
        const left = (tinters: number[]) =>
          deltaE00(
            mixColour(model, added(WHITE_JAR, nearestAddition(model, WHITE_JAR, target, tinters, false))),
            target,
          );
        expect(left([one, other])).toBeLessThanOrEqual(left([one]) + 0.01); // as its docstring says
      }
});

test('no more white at once than the jar holds of it', () => {
  const jar = { whiteGrams: 10, tinterGrams: only(BLACK, 5) };
  expect(nearestAddition(model, jar, paints.colour(WHITE_JAR), [], true).whiteGrams).toBe(10);
});

describe('suggestAddition', () => {
  test('leads to the target, as far as is believed', () => {
    const target = mixColour(model, { whiteGrams: 200, tinterGrams: [2, 0, 0.8, 0, 0, 0] });
    const said = ask(target);
    expect(said.kind).toBe('add');
    if (said.kind !== 'add') return;
    const before = deltaE00(mixColour(model, WHITE_JAR), target);
    expect(said.dE00).toBeLessThan(before / 3);
    expect(said.additions.every(({ error, grams }) => error <= 0.05 && grams > 0)).toBe(true);
    expect(
      deltaE00(mixColour(model, added(WHITE_JAR, poured(said.additions, 6))), said.predicted),
    ).toBeCloseTo(0, 6);
    expect(said.additions.map(({ what }) => what)).not.toContain('white');
  });

  test('stays short of a target while strengths are unsure, and goes all the way once they are sure', () => {
    const target = mixColour(model, { whiteGrams: 200, tinterGrams: only(OCHRE, 2) });
    const neat = (doubt: number): number => {
      const said = ask(target, { belief: firstBelief(EARTHS.map(() => doubt)) });
      return said.kind === 'add' ? said.additions.reduce((sum, { neatGrams }) => sum + neatGrams, 0) : 0;
    };
    expect(neat(0.4)).toBeLessThan(neat(0.1));
    expect(neat(0.1)).toBeLessThan(2);
    expect(neat(0.01)).toBeLessThan(2.05);
  });

  test('goes back with white alone when the jar is too dark, and counts the room', () => {
    const jar = { whiteGrams: 200, tinterGrams: only(BLACK, 0.5) };
    const target = mixColour(model, { whiteGrams: 250, tinterGrams: only(BLACK, 0.5) });
    const said = ask(target, { jar });
    expect(said.kind === 'add' && said.additions.map(({ what }) => what)).toEqual(['white']);
    const full = ask(target, { jar, bench: { ...BENCH, roomGrams: 5 } });
    expect(full).toMatchObject({ kind: 'out-of-reach' });
    expect(full.kind === 'out-of-reach' && full.missingRoomGrams).toBeGreaterThan(20);
  });

  test('stops when it is there', () => {
    const here = afterReading(model, belief, WHITE_JAR, mixColour(model, WHITE_JAR), 0.1);
    expect(ask(mixColour(model, WHITE_JAR), { belief: here })).toMatchObject({ kind: 'stop' });
  });

  test('asks for a let-down when the scale cannot show the amount', () => {
    const target = mixColour(model, { whiteGrams: 2, tinterGrams: only(BLACK, 0.003) });
    const said = ask(target, {
      jar: { whiteGrams: 2, tinterGrams: NONE },
      bench: { ...BENCH, forms: ['neat'], scaleDivisionG: 0.1 },
    });
    expect(said).toMatchObject({ kind: 'too-little-to-weigh', tinter: BLACK });
  });

  test('what a coarse scale rounds up never leads past the target', () => {
    const target = mixColour(model, { whiteGrams: 30, tinterGrams: only(OCHRE, 0.8) });
    const on = (scaleDivisionG: number) =>
      ask(target, {
        jar: { whiteGrams: 30, tinterGrams: NONE },
        bench: { ...BENCH, forms: ['neat'], scaleDivisionG },
      });
    expect(on(1)).toMatchObject({ kind: 'too-little-to-weigh', tinter: OCHRE });
    expect(on(0.45)).toMatchObject({ kind: 'add', additions: [{ what: OCHRE, grams: 0.45 }] }); // and not 0.9
  });

  test('names a tinter that it leaves out because the scale cannot show it, where that tells', () => {
    const on = (tinterGrams: number[], scaleDivisionG: number) =>
      ask(mixColour(model, { whiteGrams: 30, tinterGrams }), {
        jar: { whiteGrams: 30, tinterGrams: NONE },
        bench: { ...BENCH, forms: ['neat'], scaleDivisionG },
      });
    const ochreAndBlack = only(OCHRE, 0.6).map((grams, t) => (t === BLACK ? 0.03 : grams));
    const coarse = on(ochreAndBlack, 0.1);
    expect(coarse).toMatchObject({ kind: 'add', leftOut: { tinter: BLACK } });
    expect(coarse.kind === 'add' && coarse.additions.map(({ what }) => what)).toEqual([OCHRE]);
    expect(on(ochreAndBlack, 0.001)).not.toHaveProperty('leftOut');
    expect(on(only(OCHRE, 0.6), 0.1)).not.toHaveProperty('leftOut');
  });

  test('will not aim at a target under another light, or tint an empty jar', () => {
    const underA = { white: 'A/10', L: 86, a: 0, b: 14 } as unknown as Lab<'D65/10'>;
    expect(() => ask(underA)).toThrow(RangeError);
    expect(() => ask(paints.colour(WHITE_JAR), { jar: { whiteGrams: 0, tinterGrams: NONE } })).toThrow(
      RangeError,
    );
  });
});
