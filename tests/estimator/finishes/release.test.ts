import { describe, expect, test } from 'vitest';
import { binderOf } from '../../../src/estimator/laws/binders';
import { filmSolvent } from '../../../src/estimator/laws/film-solvents';
import type { Binder } from '../../../src/estimator/laws/lacquer';
import { runEstimate } from '../../../src/estimator/run-estimate';
import type { SolventId } from '../../../src/science/solvents/solvents';

type Blend = readonly (readonly [SolventId, number])[];
const LACQUER: Blend = [
  ['acetone', 0.25],
  ['mek', 0.1],
  ['toluene', 0.3],
  ['isobutyl-acetate', 0.2],
  ['n-butyl-acetate', 0.1],
  ['2-butoxyethanol', 0.05],
];
const ALCOHOL: Blend = [
  ['ethanol', 0.95],
  ['isopropanol', 0.05],
];
const DAY_S = 86_400;

interface Stack {
  readonly finish: string;
  readonly blend: Blend;
  readonly coats: number;
  readonly dryUm: number;
  readonly aDay: number;
  readonly apartH: number;
  readonly transferMS?: number;
}

/** Days from the last coat to each milestone, at 21 °C. */
function days({ finish, blend, coats, dryUm, aDay, apartH, transferMS = 1.2e-3 }: Stack) {
  const perDry = (1 - 0.15) / 0.15;
  const events = Array.from({ length: coats }, (_, n) => ({
    kind: 'coat' as const,
    atS: Math.floor(n / aDay) * DAY_S + (n % aDay) * apartH * 3600,
    dryM: dryUm * 1e-6,
    wetness: blend.map(([, share]) => share * perDry),
    pigment: 0,
    passage: 1,
  }));
  const { milestones } = runEstimate({
    history: {
      binder: binderOf(finish) as Binder,
      solvents: blend.map(([id]) => filmSolvent(id)),
      events,
      air: [{ fromS: 0, temperatureK: 294.15, transferMS }],
      openBaseM: 0,
      sandingK: 294.15,
      panelEffusivity: 370,
    },
    nowS: 0,
    checks: [],
  });
  const lastS = events.at(-1)?.atS ?? 0;
  const after = (s: number) => (s - lastS) / DAY_S;
  return {
    touchMin: after(milestones.touch.likelyS) * 1440,
    recoatMin: after(milestones.recoat.likelyS) * 1440,
    levelD: after(milestones.level.likelyS),
    rubOutD: after(milestones.rubOut.likelyS),
  };
}

const within = (value: number, from: number, to: number) => {
  expect(value).toBeGreaterThanOrEqual(from);
  expect(value).toBeLessThanOrEqual(to);
};

// Thin instrument build 100 to 130 um: level-sand and rub out 14 to 28 days, 5 to 35 at the edges (common practice and trade pages).
describe.each(['acrylic', 'cab'])('%s, nine coats of 12 um', (finish) => {
  test('is ready when the trade says so', () => {
    const stack = days({ finish, blend: LACQUER, coats: 9, dryUm: 12, aDay: 3, apartH: 2 });
    within(stack.levelD, 5, 21);
    within(stack.rubOutD, 10, 35);
  });
});

test('acrylic lets go of its solvent more slowly than nitrocellulose', () => {
  const of = (finish: string) =>
    days({ finish, blend: LACQUER, coats: 3, dryUm: 12, aDay: 3, apartH: 2 }).levelD;
  expect(of('acrylic')).toBeGreaterThan(1.1 * of('nitrocellulose'));
});

describe('shellac', () => {
  // Light coats at 21 °C and 50 %: touch 15 to 45 min, recoat 15 to 60 min (trade pages); a factor two at the soft end of touch.
  test('a brushed coat of 15 um in still air is soon dry and soon recoated', () => {
    const one = days({
      finish: 'shellac',
      blend: ALCOHOL,
      coats: 2,
      dryUm: 15,
      aDay: 2,
      apartH: 2,
      transferMS: 0.7e-3,
    });
    within(one.touchMin, 7, 45);
    within(one.recoatMin, 15, 60);
  });

  // Pad: rests 7 to 28 days (common practice).
  test('a padded film rests one to four weeks', () => {
    const pad = days({ finish: 'shellac', blend: ALCOHOL, coats: 9, dryUm: 6, aDay: 2, apartH: 6 });
    within(pad.rubOutD, 7, 28);
  });
});

test('a finish that cures has no such constants', () => {
  for (const finish of ['waterborne', 'precatalysed', 'conversion', 'urethane'])
    expect(binderOf(finish)).toBeUndefined();
});
