import { expect, test } from 'vitest';
import { retarderCost } from '../../../src/actions/air/retarder-cost';
import type { EstimateRequest } from '../../../src/estimator/estimate';
import type { Estimator } from '../../../src/estimator/run/client';
import { DAY_1_MS, layCoat } from '../../logbook/entries';
import { anOutlook, aShop, HOURS } from '../../parts/an-outlook';

/** An estimator that says hours later of the second stack that it is asked about. */
function slowerAndSlower() {
  const asked: EstimateRequest[] = [];
  const estimate = (request: EstimateRequest) => {
    asked.push(request);
    const more = asked.length;
    const hours = { ...HOURS, level: [0, 10 * more, 0], rubOut: [0, 25 * more, 0] } as const;
    return { result: Promise.resolve(anOutlook(hours).estimate), cancel: () => undefined };
  };
  return { asked, estimator: { estimate } as unknown as Estimator };
}

test('more retarder costs what the same stack takes longer with it, and asks nothing else', async () => {
  const { piece, shop } = aShop({ hour: 0, body: layCoat() });
  const { asked, estimator } = slowerAndSlower();
  const cost = await retarderCost(piece, shop, DAY_1_MS, 0.1, estimator);
  expect(cost).toEqual({ levelS: 10 * 3600, rubOutS: 25 * 3600 });
  expect(asked.map(({ whatIf }) => whatIf)).toEqual([[], []]);
  const [now, more] = asked.map(({ history }) => JSON.stringify(history.events));
  expect(more).not.toBe(now);
});

test('where there is no stack there is no cost, and nothing is asked', async () => {
  const { piece, shop } = aShop();
  const { asked, estimator } = slowerAndSlower();
  expect(await retarderCost(piece, shop, DAY_1_MS, 0.1, estimator)).toBeUndefined();
  expect(asked).toEqual([]);
});
