import { describe, expect, test } from 'vitest';
import { advise } from '../../../src/shop/colour/advice';
import { aimFor, shiftOf, targetOf } from '../../../src/shop/colour/aim';
import { readingOf } from '../../../src/shop/colour/believe';
import { sidesOf, sideThatCounts } from '../../../src/shop/colour/judge';
import { MatchOnPaper, tinterId, WHITE } from './a-match';

// Source of every colour and difference below: the worked scenario of the radio cabinet (aged white lacquer, edge chips).
// The target is the mean of three readings; the three below have that mean.
const TARGET = [
  ['86.4', '-0.6', '14.9'],
  ['86.6', '-0.5', '14.8'],
  ['86.5', '-0.7', '14.7'],
] as const;
const thrice = <T>(reading: T): T[] => [reading, reading, reading];

const cabinet = () =>
  new MatchOnPaper(['ochre', 'raw umber', 'red oxide', 'black'])
    .read({ as: 'target' }, TARGET)
    .mix(1, [[WHITE, '200']])
    .read(1, thrice(['95.5', '-0.8', '2.2'] as const))
    .mix(2, [
      [tinterId('ochre'), '6'],
      [tinterId('raw umber'), '1.1'],
    ])
    .read(2, thrice(['88.9', '-1.1', '12.1'] as const))
    .mix(3, [
      [tinterId('ochre'), '2.4'],
      [tinterId('red oxide'), '0.3'],
    ])
    .read(3, thrice(['86.1', '0.3', '15.9'] as const))
    .mix(4, [[WHITE, '20']])
    .read(4, thrice(['86.7', '-0.5', '14.4'] as const));
const underClear = () => cabinet().read(4, thrice(['86.1', '-0.6', '16.6'] as const), { clearCoats: 4 });

const sideOf = (match: ReturnType<MatchOnPaper['fold']>, number: number) => {
  const trial = match.trials[number - 1];
  if (!trial) throw new Error(`No trial ${number}.`);
  return sideThatCounts(match, sidesOf(match, trial));
};

test('the target is the mean of its readings', () => {
  expect(targetOf(cabinet().fold()).surface).toMatchObject({ count: 3, isDry: true, by: 'instrument' });
  const lab = targetOf(cabinet().fold()).surface?.lab;
  expect([lab?.L, lab?.a, lab?.b].map((part) => part?.toFixed(1))).toEqual(['86.5', '-0.6', '14.8']);
});

test.each([
  { trial: 1, dE00: '10.75', verdict: 'not-yet', says: ['blue', 'light'] },
  { trial: 2, dE00: '2.40', verdict: 'not-yet', says: ['blue', 'light'] }, // "too cold, too light"
  { trial: 3, dE00: '1.32', verdict: 'not-yet', says: ['red', 'yellow'] },
  { trial: 4, dE00: '0.30', verdict: 'pass', says: undefined },
])('trial $trial bare: $dE00, $verdict', ({ trial, dE00, verdict, says }) => {
  const judgement = sideOf(cabinet().fold(), trial)?.judgement;
  expect(judgement?.difference.dE00.toFixed(2)).toBe(dE00);
  expect(judgement?.verdict.kind).toBe(verdict);
  if (says) expect(judgement?.words.map(({ direction }) => direction).sort()).toEqual([...says].sort());
});

test('under four clears it is 1.09 off: not yet', () => {
  const side = sideOf(underClear().fold(), 4);
  expect(side?.under).toBe('clear');
  expect(side?.judgement?.difference.dE00.toFixed(2)).toBe('1.09');
  expect(side?.judgement?.verdict.kind).toBe('not-yet');
});

test('the clear shift is -0.6/-0.1/+2.2, and the new aim for the bare colour 87.1/-0.5/12.6', () => {
  const match = underClear().fold();
  const read = shiftOf(match);
  expect([read?.shift.dL, read?.shift.da, read?.shift.db].map((part) => part?.toFixed(1))).toEqual([
    '-0.6',
    '-0.1',
    '2.2',
  ]);
  expect(read).toMatchObject({ clearCoats: 4, on: 4 });
  const aim = aimFor(match, 'bare');
  expect(aim?.clear).toBe('moved');
  const lab = aim?.surface.lab;
  expect([lab?.L, lab?.a, lab?.b].map((part) => part?.toFixed(1))).toEqual(['87.1', '-0.5', '12.6']);
});

describe('the bare colour of a trial', () => {
  const readings = (...more: readonly (readonly [string, string, string])[]) => {
    const match = underClear()
      .mix(5, [[WHITE, '5']])
      .read(5, more, { clearCoats: 4 })
      .fold();
    const trial = match.trials[4];
    return trial && readingOf(match, trial);
  };

  test('read under clear alone is less by what clear does, and twice as unsure', () => {
    // By hand: 86.0/-0.6/16.0 less -0.6/-0.1/+2.2.
    const { lab, sd } = readings(...thrice(['86.0', '-0.6', '16.0'] as const)) ?? expect.unreachable();
    expect([lab.L.toFixed(1), lab.a.toFixed(1), lab.b.toFixed(1)]).toEqual(['86.6', '-0.5', '13.8']);
    const one = readings(['86.0', '-0.6', '16.0']) ?? expect.unreachable();
    const bare = readingOf(cabinet().fold(), cabinet().fold().trials[0] ?? expect.unreachable());
    expect(one.sd).toBeGreaterThan(sd);
    expect(one.sd).toBeGreaterThan(bare?.sd ?? 1);
    expect(sd).toBeGreaterThanOrEqual(0.15);
  });

  test('is none before the shift of clear was read', () => {
    const match = cabinet()
      .mix(5, [[WHITE, '5']])
      .read(5, [['86.0', '-0.6', '16.0']], { clearCoats: 4 })
      .fold();
    expect(readingOf(match, match.trials[4] ?? expect.unreachable())).toBeUndefined();
  });
});

describe('the advice', () => {
  test('after the pass bare is to stop or to leave it; after the clear it is to add again', () => {
    const bare = advise(cabinet().fold(), [cabinet().fold()], {});
    expect(bare.kind === 'advice' && bare.suggestion.kind).toBe('stop');
    const again = advise(underClear().fold(), [underClear().fold()], {});
    expect(again.kind === 'advice' && again.suggestion.kind).toBe('add');
    // The jar is now too yellow for its aim, and white is the only way back.
    expect(
      again.kind === 'advice' &&
        again.suggestion.kind === 'add' &&
        again.suggestion.additions.map(({ what }) => what),
    ).toContain('white');
  });
});
