import { describe, expect, test } from 'vitest';
import { estimateByLaw } from '../../../src/estimator/finishes/estimate-by-law';
import type { SheetTimes } from '../../../src/estimator/finishes/law-history';
import { law, onePiece } from './cases';

describe('a data sheet that says little', () => {
  const { temperatureK, relativeHumidity } = { temperatureK: 294.15, relativeHumidity: 0.5 };
  const usual = law('conversion');
  const dryM = usual.usualDryM;
  const at = (sheet: Partial<SheetTimes>, film = dryM) =>
    estimateByLaw(
      'conversion',
      onePiece({ dryM: film, sheet: { temperatureK, relativeHumidity, ...sheet } }),
    );
  const ratio = (s: number, than: number) => Math.round((100 * s) / than) / 100;

  test('moves each moment as the nearest that it names', () => {
    const { milestones, law: own } = at({
      touchS: 2 * usual.touch.typical,
      curedS: 3 * usual.settled.typical,
    });
    expect(ratio(milestones.touch.likelyS, usual.touch.typical)).toBe(2);
    expect(ratio(milestones.recoat.likelyS, usual.recoat.typical)).toBe(2);
    expect(ratio(milestones.level.likelyS, usual.level.typical)).toBe(3);
    expect(ratio(milestones.rubOut.likelyS, usual.rubOut.typical)).toBe(3);
    expect(ratio(own.lightUse.likelyS, usual.lightUse.typical)).toBe(3);
  });

  test('has a band of its own, from four fifths to thirteen tenths of what it says (judgement, no source)', () => {
    const { recoat } = at({ recoatFromS: 6000 }).milestones;
    expect([recoat.earliestS, recoat.likelyS, recoat.lateS].map((s) => ratio(s, 6000))).toEqual([
      0.8, 1, 1.3,
    ]);
  });

  test('means the film that it names: half of that is dry in half of the time', () => {
    const thick = { recoatFromS: 6000, filmDryM: 2 * dryM };
    expect(ratio(at(thick).milestones.recoat.likelyS, 6000)).toBe(0.5);
    expect(ratio(at(thick, 2 * dryM).milestones.recoat.likelyS, 6000)).toBe(1);
  });
});
