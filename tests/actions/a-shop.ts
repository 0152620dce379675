import { onTestFinished } from 'vitest';
import { type OpenShop, openShop, type ShopNeeds } from '../../src/actions/shop';
import type { EstimateRequest } from '../../src/estimator/estimate';
import { answer } from '../../src/estimator/run/answer';
import type { WorkerPort } from '../../src/estimator/run/client';
import { newId } from '../../src/logbook/ids/new-id';
import { openDatabase } from '../../src/logbook/storage/database';
import { openStore, type Store } from '../../src/logbook/storage/store';
import { MINUTE_MS } from '../../src/units';

export const NOW_MS = Date.UTC(2026, 2, 10, 13); // 14:00 in Berlin
let databases = 0;

export const newName = (): string => `shop-test-${databases++}`;
export function storeOn(name: string): Store {
  return openStore('coatwait-demo', openDatabase(name));
}

/** A worker in the same thread, behind the same structured clone. */
export function worker(
  answered: (request: EstimateRequest) => ReturnType<typeof answer> = answer,
): WorkerPort {
  let isEnded = false;
  const port: WorkerPort = {
    postMessage(message) {
      const request = structuredClone(message) as EstimateRequest;
      setTimeout(() => {
        if (!isEnded) port.onmessage?.({ data: structuredClone(answered(request)) });
      });
    },
    terminate() {
      isEnded = true;
    },
    onmessage: null,
    onerror: null,
    onmessageerror: null,
  };
  return port;
}

/** A shop of a test, closed when the test ends. */
export async function aShop(
  given: Partial<ShopNeeds> = {},
  which: 'own' | 'demo' = 'own',
): Promise<OpenShop> {
  const open = await openShop(which, {
    store: given.store ?? storeOn(newName()),
    now: () => NOW_MS,
    zone: () => 'Europe/Berlin',
    newId,
    every: () => () => undefined,
    onWake: () => () => undefined,
    startWorker: () =>
      worker(() => ({ ok: false, why: 'unsolvable', message: 'not asked for in this test' })),
    restMs: 0,
    afterPaint: (job) => job(),
    beforeDrawing: (job) => job(),
    ...given,
  });
  onTestFinished(() => open.close());
  return open;
}

/** The value of a result, or the test fails. */
export function done<Value>(result: { ok: true; value: Value } | { ok: false; failure: unknown }): Value {
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.value;
}

/** A shop with a piece that was begun 90 minutes ago and a jar of lacquer, thinned, that was filled ten minutes later. */
export async function aBoxAndAJar(given: Partial<ShopNeeds> = {}) {
  const open = await aShop(given);
  const { piece } = done(
    await open.actions.startPiece({ name: 'Box', base: 'sealed' }, NOW_MS - 90 * MINUTE_MS),
  );
  const { jar } = done(
    await open.actions.fillJar(
      {
        name: 'Gloss',
        product: { finish: 'nitrocellulose', volumeSolids: { text: '22', unit: '%' } },
        thinner: { name: 'Thinner', blend: [{ solvent: 'toluene', share: 1 }] },
        thinning: { of: 'lacquer', percent: { text: '50', unit: '%' } },
      },
      NOW_MS - 80 * MINUTE_MS,
    ),
  );
  return { open, piece, jar };
}
