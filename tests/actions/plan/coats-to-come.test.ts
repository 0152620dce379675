import { expect, test } from 'vitest';
import { estimatedWaits } from '../../../src/actions/plan/waits';
import { known } from '../../../src/estimator/known';
import { runEstimate } from '../../../src/estimator/run-estimate';
import { DAY_S, stack } from '../../estimator/stacks';
import { DAY_1_MS, layCoat } from '../../logbook/entries';
import { aShop } from '../../parts/an-outlook';
import { coat, wait } from './plan-steps';

// Scenario B of the trade notes: 12 coats of 12.5 um dry, three a day. What is planned while few of them are on is held against the
// model's own run with all twelve.
const full = stack({ coats: 12, dryUm: 12.5 });
const coats = full.events.filter((event) => event.kind === 'coat');
const after = (on: number) => {
  const last = coats[on - 1] as (typeof coats)[number];
  const history = { ...full, events: coats.slice(0, on) };
  return { last, estimate: known(runEstimate({ history, nowS: last.atS, checks: [], nextCoat: last })) };
};

/** Days from the twelfth coat to level-sanding, as planned when so many are on. */
function planned(on: number): readonly number[] {
  const { last, estimate } = after(on);
  const { piece } = aShop(...coats.slice(0, on).map(({ atS }) => ({ hour: atS / 3600, body: layCoat() })));
  const steps = [...coats.slice(on).map((_, at) => coat(`${at}`)), wait('w', 'level-sand')];
  const worked = estimatedWaits(steps, {
    piece,
    outlook: { state: 'ready', estimate, startMs: DAY_1_MS, stale: false },
    moments: [],
    isOwn: () => false,
    nowMs: DAY_1_MS + last.atS * 1000,
  }).at(-1);
  if (worked?.kind !== 'wait') throw new Error('No wait was planned.');
  const { earliest, likely, late } = worked.minutes;
  return [earliest, likely, late].map((minutes) => (minutes * 60) / DAY_S);
}

test('a build that has just begun is planned near what the model says of it in the end, and as sure', () => {
  const { last, estimate } = after(12);
  const inTheEnd = (estimate.milestones.level.likelyS - last.atS) / DAY_S;
  expect(inTheEnd).toBeGreaterThan(10);
  for (const on of [1, 3]) {
    const [earliest = 0, likely = 0, late = 0] = planned(on);
    expect(likely / inTheEnd).toBeGreaterThan(0.7);
    expect(likely / inTheEnd).toBeLessThan(1.5); // 29 days to 12, were each coat to add as much as the first
    expect(earliest).toBeLessThan(inTheEnd);
    expect(late).toBeGreaterThan(inTheEnd);
  }
});
