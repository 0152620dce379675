import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Milestone } from '../../src/estimator/estimate';
import type { StackHistory } from '../../src/estimator/history';
import { at, lastWetS, secondsTo } from '../../src/estimator/read-off';
import { simulate } from '../../src/estimator/simulate';
import { DEFAULT_ACCURACY } from '../../src/estimator/solver/solver';
import { toKelvin } from '../../src/units';
import reference from '../reference/drying-checks.json';
import { DAY_S, HOUR_S, type StackCase, stack } from './stacks';

const { L1, L3 } = reference.checks;

const runTo = (history: StackHistory, days: number, tolerance = DEFAULT_ACCURACY.tolerance) =>
  simulate(history, {
    untilS: lastWetS(history) + days * DAY_S,
    accuracy: { ...DEFAULT_ACCURACY, tolerance },
  });

function daysTo(
  history: StackHistory,
  milestones: readonly Milestone[],
  days = 300,
  tolerance?: number,
): number[] {
  const { trace } = runTo(history, days, tolerance);
  return milestones.map((milestone) => secondsTo(trace, history, milestone) / DAY_S);
}

/**
 * The recorded table of the model, days after the last coat at 21 C in gentle air, held to 15 %. It was made on a coarse mesh
 * at a diffusivity of 1.5e-15 m2/s, and read off at the first look at or after the moment; on a mesh on which the result no
 * longer depends (next test but one) the same table comes out at 1.35e-15, our default. Left out, because coarseness and not
 * the laws made them: the stack at 31 C, whose looks were half a day apart, and level-sand and rub-out of the brush fill, whose
 * "top 20 um" was two cells of some 30 um. They are held to the trade's ranges below.
 */
describe('the recorded table', () => {
  const ROWS: readonly { what: string; of: StackCase; level?: number; rubOut?: number; settled?: number }[] =
    [
      {
        what: 'two 25 um coats an hour apart',
        of: { coats: 2, dryUm: 25, gapH: 1 },
        level: 6.6,
        rubOut: 11.6,
        settled: 13,
      },
      { what: 'nine 12 um coats', of: {}, level: 9.6, rubOut: 16, settled: 47 },
      { what: 'without retarder', of: { retarder: 0 }, level: 7.6, rubOut: 12.6, settled: 36 },
      { what: 'with 15 % retarder', of: { retarder: 0.15 }, level: 11.6, rubOut: 19.6, settled: 59 },
      { what: 'fourteen 12 um coats', of: { coats: 14 }, level: 12.6, rubOut: 20.6, settled: 104 },
      { what: 'at 11 C, sanded at 21 C', of: { airC: 11 }, level: 34, rubOut: 61 },
      { what: '20 % pigment', of: { pigment: 0.2 }, level: 12, rubOut: 20, settled: 57 },
      {
        what: 'diffusivity divided by 2.5',
        of: { diffusivity: 1 / 2.5 },
        level: 22,
        rubOut: 38,
        settled: 114,
      },
      { what: 'diffusivity times 2.5', of: { diffusivity: 2.5 }, level: 4, rubOut: 6.5, settled: 19 },
      { what: 'brush fill of 200 um', of: { coats: 1, dryUm: 200, volumeSolids: 0.25 }, settled: 167 },
    ];
  test.each(ROWS)('$what', ({ of, level, rubOut, settled }) => {
    const [l, r, s] = daysTo(stack(of), ['level', 'rubOut', 'settled']) as [number, number, number];
    for (const [got, recorded] of [
      [l, level],
      [r, rubOut],
      [s, settled],
    ] as const) {
      if (recorded !== undefined) expect(Math.abs(got / recorded - 1)).toBeLessThan(0.15);
    }
  });
});

// Common practice, no source, but the rows T1 to T3 of drying-checks.json, read on trade pages.
describe('the ranges of the trade', () => {
  const ROWS: readonly {
    what: string;
    of: StackCase;
    milestone: Milestone;
    days: readonly [number, number];
  }[] = [
    {
      what: 'a 15 um coat is dry to touch in 5 to 25 min',
      of: { coats: 1, dryUm: 15 },
      milestone: 'touch',
      days: [5 / 1440, 25 / 1440],
    },
    {
      what: 'the third coat of a day may be recoated in 15 to 120 min',
      of: { coats: 3 },
      milestone: 'recoat',
      days: [15 / 1440, 120 / 1440],
    },
    {
      what: 'a thin instrument build may be levelled after 5 to 21 days',
      of: { coats: 10 },
      milestone: 'level',
      days: [5, 21],
    },
    { what: 'and rubbed out after 10 to 35', of: { coats: 10 }, milestone: 'rubOut', days: [10, 35] },
    {
      what: 'two furniture coats may be levelled after 3 to 7 days',
      of: { coats: 2, dryUm: 20, gapH: 1 },
      milestone: 'level',
      days: [3, 7],
    },
    {
      what: 'a brush fill may be levelled after 7 to 30 days',
      of: { coats: 1, dryUm: 200, volumeSolids: 0.25 },
      milestone: 'level',
      days: [7, 30],
    },
  ];
  test.each(ROWS)('$what', ({ of, milestone, days }) => {
    const [got] = daysTo(stack(of), [milestone]) as [number];
    expect(got).toBeGreaterThanOrEqual(days[0]);
    expect(got).toBeLessThanOrEqual(days[1]);
  });
});

test('the dates do not depend on the steps: a tolerance eight times finer moves them by less than 1 %', () => {
  const coarse = daysTo(stack(), ['level', 'rubOut', 'settled']);
  const fine = daysTo(stack(), ['level', 'rubOut', 'settled'], 300, DEFAULT_ACCURACY.tolerance / 8);
  for (const [k, days] of coarse.entries())
    expect(Math.abs(days / (fine[k] as number) - 1)).toBeLessThan(0.01);
});

// Independent solver: eight coats of 20 um, three a day 90 min apart, beside one film of 160 um, from one solvent at 22 C.
describe('a stack forgets how its coats were spread over days', () => {
  const { t_d, wt_pct_8x20, wt_pct_1x160 } = L3.expected;
  const { Dg_m2_s, b, Eg_J_mol, chi, rho1, rho2, M, w_start, k_g_mm_s, Tg1_K, Tg2_C, T_C } = L1.inputs;
  const history = (coats: number, dryM: number): StackHistory => ({
    binder: {
      densityKgM3: rho2,
      tgK: toKelvin(Tg2_C),
      chi,
      glassDiffusivityM2S: Dg_m2_s,
      wlfShare: b,
      glassActivationJMol: Eg_J_mol,
    },
    solvents: [
      {
        densityKgM3: rho1,
        tgK: Tg1_K,
        ratio: 1,
        molarMassKgMol: M,
        latentHeatJMol: 0, // the reference knows no cooling
        transferRatio: 1,
        // 1664 Pa at 25 C, and the slope of the latent heat (Clausius and Clapeyron)
        vapour: { lnA: Math.log(1664) + 43_900 / 8.314 / 298.15, lnB: 43_900 / 8.314, cK: 0 },
      },
    ],
    events: Array.from({ length: coats }, (_, k) => ({
      kind: 'coat',
      atS: Math.floor(k / 3) * DAY_S + (k % 3) * 1.5 * HOUR_S,
      dryM,
      wetness: [((w_start / (1 - w_start)) * rho2) / rho1],
      pigment: 0,
      passage: 1,
    })),
    air: [{ fromS: 0, temperatureK: toKelvin(T_C), transferMS: k_g_mm_s * 1e-3 }],
    openBaseM: 0,
    sandingK: toKelvin(T_C),
    panelEffusivity: 370,
  });
  test.each([
    { what: '8 x 20 um', of: history(8, 20e-6), expected: wt_pct_8x20 },
    { what: '1 x 160 um', of: history(1, 160e-6), expected: wt_pct_1x160 },
  ])('$what', ({ of, expected }) => {
    const { trace } = runTo(of, 30, 0.02);
    for (const [k, days] of t_d.entries()) {
      const mass = at(trace, trace.heldM, lastWetS(of) + days * DAY_S) * rho1;
      const wtPct = (100 * mass) / (mass + 160e-6 * rho2);
      expect(Math.abs(wtPct / (expected[k] as number) - 1)).toBeLessThan(L3.tolerance.rel);
    }
  });
});

test('air movement decides minutes and not weeks', () => {
  const [gentle, strong] = [1.2e-3, 2.8e-3].map((transferMS) =>
    daysTo(stack({ transferMS }), ['touch', 'level']),
  ) as [number[], number[]];
  expect((gentle[0] as number) / (strong[0] as number)).toBeGreaterThan(1.3);
  expect(Math.abs((gentle[1] as number) / (strong[1] as number) - 1)).toBeLessThan(0.05);
});

test('an open base takes solvent up, and the stack waits longer for it', () => {
  const closed = stack({ coats: 2 });
  const [sealed, open] = [closed, { ...closed, openBaseM: 40e-6 }].map(
    (history) => daysTo(history, ['settled'])[0] as number,
  );
  expect(open as number).toBeGreaterThan(sealed as number);
});

test('a flash coat softens a dry film, which then hardens again', () => {
  const laid = stack({ coats: 2 });
  const flashAtS = 60 * DAY_S;
  const history: StackHistory = {
    ...laid,
    events: [...laid.events, { kind: 'flash', atS: flashAtS, solventM: laid.solvents.map(() => 4e-6) }],
  };
  const { trace, balance } = runTo(history, 30);
  const hardness = (days: number) => at(trace, trace.biteTgK, flashAtS + days * DAY_S);
  expect(hardness(-0.01)).toBeGreaterThan(hardness(0.01) + 20);
  expect(hardness(20)).toBeGreaterThan(hardness(0.5));
  expect(balance.laid.reduce((a, b) => a + b)).toBeGreaterThan(20e-6);
});

const anyStack = fc.record({
  coats: fc.integer({ min: 1, max: 5 }),
  dryUm: fc.double({ min: 5, max: 35, noNaN: true }),
  gapH: fc.double({ min: 0.5, max: 6, noNaN: true }),
  volumeSolids: fc.double({ min: 0.12, max: 0.3, noNaN: true }),
  retarder: fc.double({ min: 0, max: 0.15, noNaN: true }),
  pigment: fc.double({ min: 0, max: 0.3, noNaN: true }),
  airC: fc.double({ min: 10, max: 32, noNaN: true }),
  transferMS: fc.double({ min: 0.7e-3, max: 2.8e-3, noNaN: true }),
});

// A coat of 10 um sanded away to the last bit: the two figures are not equal in binary, and what rounding leaves once cost a million nodes.
test('a coat sanded away to its last atom costs no more to march than any other', () => {
  const { events, ...rest } = stack({ coats: 3, dryUm: 10, perDay: 1 });
  const [first, second, third] = events;
  const stepsWith = (removedM: number): number => {
    const sanding = { kind: 'sand' as const, atS: DAY_S + 8 * HOUR_S, removedM };
    const all = [first, second, sanding, third].flatMap((event) => event ?? []);
    return simulate({ ...rest, events: all }, { untilS: 30 * DAY_S, budget: { left: 1e6 } }).steps;
  };
  const usual = stepsWith(9e-6);
  for (const removedM of [10e-6, 10e-6 - 2 ** -69, 10e-6 + 2 ** -69])
    expect(stepsWith(removedM)).toBeLessThan(1.1 * usual);
});

describe('over random stacks', () => {
  test('no solvent is made or lost: 1e-9 of what was laid', () => {
    fc.assert(
      fc.property(anyStack, fc.double({ min: 1e-6, max: 60e-6, noNaN: true }), (of, removedM) => {
        const history = stack({ ...of, sanded: [{ atS: 5 * DAY_S, removedM }] });
        const { laid, evaporated, sanded, held } = simulate(history, { untilS: 20 * DAY_S }).balance;
        for (const [i, whole] of laid.entries()) {
          const found = (evaporated[i] as number) + (sanded[i] as number) + (held[i] as number);
          expect(Math.abs(found - whole)).toBeLessThanOrEqual(1e-9 * whole);
        }
      }),
      { numRuns: 150, seed: 1 },
    );
  });

  test('no wetness falls below nothing', () => {
    fc.assert(
      fc.property(anyStack, (of) => {
        const { trace, balance } = simulate(stack(of), { untilS: 10 * DAY_S });
        expect(Math.min(...trace.heldM)).toBeGreaterThanOrEqual(0);
        expect(Math.min(...balance.held)).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 100, seed: 2 },
    );
  });

  const LATER: readonly { what: string; slower: (of: StackCase) => StackCase }[] = [
    { what: 'a thicker coat', slower: (of) => ({ ...of, dryUm: (of.dryUm as number) * 1.3 }) },
    { what: 'one more coat', slower: (of) => ({ ...of, coats: (of.coats as number) + 1 }) },
    { what: 'more retarder', slower: (of) => ({ ...of, retarder: (of.retarder as number) + 0.05 }) },
    { what: 'colder air', slower: (of) => ({ ...of, airC: (of.airC as number) - 4 }) },
    { what: 'more pigment', slower: (of) => ({ ...of, pigment: (of.pigment as number) + 0.1 }) },
    { what: 'a slower film former', slower: (of) => ({ ...of, diffusivity: 0.7 }) },
  ];
  test.each(LATER)('$what is never sooner ready', ({ slower }) => {
    fc.assert(
      fc.property(anyStack, (of) => {
        // By the clock on the wall: one more coat starts the waiting anew, over coats that have dried meanwhile.
        const [fast, slow] = [of, slower(of)].map((one) => {
          const history = stack({ ...one, sandingC: 21 });
          return daysTo(history, ['level', 'settled'], 400).map((days) => days + lastWetS(history) / DAY_S);
        }) as [number[], number[]];
        for (const [k, days] of fast.entries()) {
          // Half a per cent for the steps; an hour for what is over before the first night.
          expect(slow[k] as number).toBeGreaterThanOrEqual(days * 0.995 - HOUR_S / DAY_S);
        }
      }),
      { numRuns: 60, seed: 3 },
    );
  });
});
