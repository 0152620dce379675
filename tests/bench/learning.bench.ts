import { test } from 'vitest';
import { shops, summary, WAYS } from '../estimator/card/shops';
import { say } from './clock';

const INSIDE = Number(process.env.SHOPS ?? 300);

/** How well shops learn: `npm run learning-sim`. What shops from outside the prior get is printed, not promised. */
test('what shops learn by thumb, by paper and by a card', () => {
  for (const [count, from] of [
    [INSIDE, 'inside'],
    [Math.round(INSIDE / 3), 'outside'],
  ] as const) {
    const outcomes = shops(count, from, 20_260_301);
    say(`  ${count} shops from ${from} the prior: of the band for rubbing out`);
    for (const way of WAYS) {
      const { inside, factor, error } = summary(outcomes, way);
      say(
        `    ${way.padEnd(14)} held ${(inside * 100).toFixed(0)} %, factor ${factor.toFixed(2)}, likely off by ${error.toFixed(2)}`,
      );
    }
  }
}, 900_000);
