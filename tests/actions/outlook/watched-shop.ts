import 'fake-indexeddb/auto';
import { onTestFinished, vi } from 'vitest';
import type { OpenShop } from '../../../src/actions/shop';
import { WEIGHED_AT } from '../../../src/estimator/belief';
import type { EstimateRequest } from '../../../src/estimator/estimate';
import { type Estimate, MILESTONES } from '../../../src/estimator/estimate';
import type { Answer, WorkerPort } from '../../../src/estimator/run/client';
import { aShop, done, NOW_MS, worker } from '../a-shop';

export const HOUR_MS = 3_600_000;
export const RESTING_MS = 400;
export const um = (text: string) => ({ text, unit: 'um' }) as const;
export const percent = (text: string) => ({ text, unit: '%' }) as const;
export const JAR = {
  name: 'Gloss',
  product: { finish: 'nitrocellulose', volumeSolids: percent('22') },
  thinner: { name: 'Thinner', blend: [{ solvent: 'toluene', share: 1 }] },
  thinning: { of: 'lacquer', percent: percent('50') },
} as const;

/** An estimate that only says how many coats it is of. */
export const estimateOf = (
  { history }: EstimateRequest,
  learned: readonly number[] = WEIGHED_AT.map(() => 0),
): Answer => ({
  ok: true,
  estimate: {
    now: { dryM: history.events.length },
    milestones: Object.fromEntries(MILESTONES.map((name) => [name, { earliestS: 0, likelyS: 0, lateS: 0 }])),
    learned,
    profiles: [],
  } as unknown as Estimate,
});

/** A shop whose worker notes what it is asked. One that rests has time that passes only while something is waited for. */
export async function watched(
  answered: (request: EstimateRequest) => Answer = estimateOf,
  restMs = 0,
  startWorker?: () => WorkerPort,
) {
  if (restMs > 0) {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    onTestFinished(() => void vi.useRealTimers());
  }
  const asked: EstimateRequest[] = [];
  let nowMs = NOW_MS;
  const ticks: (() => void)[] = [];
  const open = await aShop({
    now: () => nowMs,
    every: (_, tick) => {
      ticks.push(tick);
      return () => undefined;
    },
    startWorker:
      startWorker ??
      (() =>
        worker((request) => {
          asked.push(request);
          return answered(request);
        })),
    restMs,
  });
  const pass = (ms: number): void => {
    nowMs += ms;
    for (const tick of ticks) tick();
  };
  return { open, asked, pass };
}
export async function pieceWithCoat(open: OpenShop, agoMs = HOUR_MS, jar?: string) {
  const filled = jar ?? done(await open.actions.fillJar(JAR, NOW_MS - 5 * HOUR_MS)).jar;
  const { piece } = done(
    await open.actions.startPiece({ name: 'Box', base: 'sealed' }, NOW_MS - 4 * HOUR_MS),
  );
  const coat = { piece, jar: filled, how: 'spray', film: { by: 'wet', wetFilm: um('85') } } as const;
  const laid = done(await open.actions.layCoat(coat, NOW_MS - agoMs));
  return { piece, jar: filled, coat, laid };
}
export const ready = (open: OpenShop, piece: string) =>
  vi.waitFor(() => {
    const outlook = open.outlooks.value.get(piece);
    if (outlook?.state !== 'ready' || outlook.stale) throw new Error(`${outlook?.state}`);
    return outlook;
  });
export const settled = () => new Promise((resolve) => setTimeout(resolve, 30));
