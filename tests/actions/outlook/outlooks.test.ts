import 'fake-indexeddb/auto';
import { describe, expect, test, vi } from 'vitest';
import { lawOutlook } from '../../../src/actions/outlook/law-outlook';
import type { OpenShop } from '../../../src/actions/shop';
import { WEIGHED_AT } from '../../../src/estimator/belief';
import type { EstimateRequest } from '../../../src/estimator/estimate';
import { answer } from '../../../src/estimator/run/answer';
import type { Jar } from '../../../src/logbook/fold/mix/jars';
import type { Piece } from '../../../src/logbook/fold/piece/pieces';
import { aShop, done, NOW_MS, newName, storeOn, worker } from '../a-shop';

import {
  estimateOf,
  HOUR_MS,
  JAR,
  percent,
  pieceWithCoat,
  RESTING_MS,
  ready,
  settled,
  watched,
} from './watched-shop';

const isReady = (open: OpenShop, piece: string): boolean => {
  const outlook = open.outlooks.value.get(piece);
  return outlook?.state === 'ready' && !outlook.stale;
};

describe('an outlook', () => {
  test('of a piece without a coat is that there is none', async () => {
    const { open, asked } = await watched();
    const { piece } = done(await open.actions.startPiece({ name: 'Box', base: 'sealed' }));
    await vi.waitFor(() => expect(open.outlooks.value.get(piece)).toEqual({ state: 'no-coats' }));
    expect(asked).toHaveLength(0);
  });

  test('comes after a coat, counted from it', async () => {
    const { open } = await watched();
    const { piece } = await pieceWithCoat(open);
    expect(await ready(open, piece)).toMatchObject({
      startMs: NOW_MS - HOUR_MS,
      estimate: { now: { dryM: 1 } },
    });
  });

  test('is stale from the entry that changes it until it is worked out anew', async () => {
    const { open } = await watched();
    const { piece, coat } = await pieceWithCoat(open);
    await ready(open, piece);
    const next = done(await open.actions.layCoat(coat));
    expect(open.outlooks.value.get(piece)).toMatchObject({ state: 'ready', stale: true });
    expect(await ready(open, piece)).toMatchObject({ estimate: { now: { dryM: 2 } } });
    done(await open.actions.undo(next.id));
    expect(await ready(open, piece)).toMatchObject({ estimate: { now: { dryM: 1 } } });
  });

  test('is not worked out again as the clock ticks, but after an hour', async () => {
    const { open, asked, pass } = await watched();
    const { piece } = await pieceWithCoat(open);
    await ready(open, piece);
    pass(20_000);
    await settled();
    expect(asked).toHaveLength(1);
    pass(HOUR_MS);
    expect(open.outlooks.value.get(piece)).toMatchObject({ stale: false });
    await vi.waitFor(() => expect(asked).toHaveLength(2));
    expect(asked[1]?.nowS).toBeCloseTo(2 * 3600 + 20, 6);
  });

  test('is not worked out again for what does not touch it', async () => {
    const { open, asked } = await watched();
    const { piece } = await pieceWithCoat(open);
    await ready(open, piece);
    done(await open.actions.changeSettings({ units: 'us' }));
    done(await open.actions.changePiece({ piece, name: 'Another name' }));
    done(await open.actions.startPiece({ name: 'Tray', base: 'sealed' }));
    await settled();
    expect(asked).toHaveLength(1);
  });

  test.each([
    {
      what: 'a reading of the air',
      act: ({ actions }: OpenShop) =>
        actions.readAir({
          temperature: { text: '25', unit: 'C' },
          humidity: percent('50'),
          movement: 'still',
        }),
    },
    {
      what: 'a warmer sanding room',
      act: ({ actions }: OpenShop) =>
        actions.changeSettings({ sandingTemperature: { text: '25', unit: 'C' } }),
    },
    {
      what: 'a check',
      act: ({ actions }: OpenShop, piece: string) =>
        actions.logCheck({ piece, test: 'print', result: 'fails' }),
    },
    {
      what: 'another base',
      act: ({ actions }: OpenShop, piece: string) => actions.changePiece({ piece, base: 'old-redissolves' }),
    },
  ])('is worked out again after $what', async ({ act }) => {
    const { open, asked } = await watched();
    const { piece } = await pieceWithCoat(open);
    await ready(open, piece);
    done<unknown>(await act(open, piece));
    await vi.waitFor(() => expect(asked).toHaveLength(2));
  });

  test('that cannot be worked out says why, and comes again when the entry is undone', async () => {
    const { open } = await watched(({ history }) =>
      history.events.length > 1
        ? { ok: false, why: 'too-thick', message: 'no' }
        : estimateOf({ history } as EstimateRequest),
    );
    const { piece, coat } = await pieceWithCoat(open);
    await ready(open, piece);
    const next = done(await open.actions.layCoat(coat));
    await vi.waitFor(() =>
      expect(open.outlooks.value.get(piece)).toEqual({
        state: 'failed',
        message: expect.stringContaining('Too thick to be worked out'),
      }),
    );
    done(await open.actions.undo(next.id));
    await ready(open, piece);
  });

  test.each(['waterborne', 'precatalysed', 'conversion', 'urethane'] as const)(
    'of a jar of an older logbook that thinner and retarder leave no %s in says so in words',
    async (finish) => {
      const { open } = await watched();
      const product = { ...JAR.product, finish };
      const { jar: id } = done(await open.actions.fillJar({ ...JAR, product }, NOW_MS - 5 * HOUR_MS));
      const { piece: name } = await pieceWithCoat(open, HOUR_MS, id);
      const shop = open.shop.value;
      const jar = shop.jars.get(id) as Jar;
      const share = (si: number) =>
        ({ of: 'mix', percent: { si, typed: percent(String(100 * si)) } }) as const;
      const retarder = { ...share(0.5), solvent: '2-butoxyethanol' } as Jar['retarder'];
      const full = { ...jar, thinning: share(0.95), ...(retarder && { retarder }) };
      const piece = shop.pieces.get(name) as Piece;
      const told = lawOutlook(piece, { ...shop, jars: new Map([[id, full]]) }, NOW_MS);
      expect(told).toEqual({ state: 'failed', message: expect.stringContaining('no room for lacquer') });
      expect(lawOutlook(piece, shop, NOW_MS)?.state).toBe('ready');
    },
  );

  test('takes in what the checks of another piece with the same product have taught', async () => {
    const { open, asked } = await watched((request) =>
      estimateOf(request, request.checks.length > 0 ? WEIGHED_AT.map((x) => -2 * (x + 0.7) ** 2) : undefined),
    );
    const { piece, jar } = await pieceWithCoat(open);
    await ready(open, piece);
    done(await open.actions.logCheck({ piece, test: 'gum', result: 'fails' }));
    await ready(open, piece);
    const { piece: other } = await pieceWithCoat(open, HOUR_MS, jar);
    await ready(open, other);
    await settled();
    const belief = asked.at(-1)?.belief;
    expect(belief?.mean).toBeLessThan(-0.1);
    expect(belief?.spread).toBeLessThan(0.6);
    expect(asked.filter(({ checks }) => checks.length > 0).map((request) => request.belief)).toEqual([
      undefined,
    ]);
  });
});

test.each([2, 6])(
  '%i pieces that teach each other are worked out twice each, not once a lesson',
  async (count) => {
    const { open, asked } = await watched(
      (request) =>
        estimateOf(
          request,
          WEIGHED_AT.map((x) => -2 * (x + 0.7) ** 2),
        ),
      RESTING_MS,
    );
    const { piece: first, jar } = await pieceWithCoat(open);
    const others = await Promise.all(
      Array.from({ length: count - 1 }, () => pieceWithCoat(open, HOUR_MS, jar)),
    );
    const pieces = [first, ...others.map(({ piece }) => piece)];
    for (const piece of pieces) done(await open.actions.logCheck({ piece, test: 'print', result: 'passes' }));
    open.look(first);
    await vi.waitFor(() => expect(pieces.every((piece) => isReady(open, piece))).toBe(true));
    await vi.advanceTimersByTimeAsync(10 * RESTING_MS);
    const times = pieces.map((piece) => asked.filter(({ stack }) => stack === piece).length);
    expect(Math.max(...times)).toBeLessThanOrEqual(2);
    expect(asked.slice(-count).every(({ belief }) => (belief?.mean ?? 0) < -0.1)).toBe(true);
  },
);

test('a piece whose coat is undone, and the undoing too, has its times again', async () => {
  const { open } = await watched();
  const { piece, laid } = await pieceWithCoat(open);
  const before = await ready(open, piece);
  const strike = done(await open.actions.undo(laid.id));
  await vi.waitFor(() => expect(open.outlooks.value.get(piece)).toEqual({ state: 'no-coats' }));
  done(await open.actions.undo(strike.id));
  expect(await ready(open, piece)).toEqual(before);
});

test('a piece that failed, was changed and changed back before it was worked out again, says why again', async () => {
  const { open } = await watched(() => ({ ok: false, why: 'too-thick', message: 'no' }), RESTING_MS);
  const { piece, coat } = await pieceWithCoat(open);
  const failed = { state: 'failed', message: expect.stringContaining('Too thick') };
  await vi.waitFor(() => expect(open.outlooks.value.get(piece)).toEqual(failed));
  const next = done(await open.actions.layCoat(coat));
  await vi.waitFor(() => expect(open.outlooks.value.get(piece)).toEqual({ state: 'computing' }));
  done(await open.actions.undo(next.id));
  await vi.waitFor(() => expect(open.outlooks.value.get(piece)).toEqual(failed));
});

test('a shop that is killed and opened again says the same times', async () => {
  const name = newName();
  const first = await aShop({ store: storeOn(name), startWorker: () => worker(answer) });
  const { piece } = await pieceWithCoat(first);
  const before = await ready(first, piece);
  first.close();
  const again = await aShop({ store: storeOn(name), startWorker: () => worker(answer) });
  expect(await ready(again, piece)).toEqual(before);
});

describe('the demo shop', () => {
  test('opens with four pieces, keeps what is done in it, and is empty after leaving', async () => {
    const name = newName();
    const open = await aShop({ store: storeOn(name) }, 'demo');
    expect(open.shop.value.pieces.size).toBe(4);
    const { piece } = done(await open.actions.startPiece({ name: 'Mine', base: 'sealed' }));
    open.close();
    const again = await aShop({ store: storeOn(name) }, 'demo');
    expect([...again.shop.value.pieces.keys()]).toContain(piece);
    expect(await again.leave()).toEqual({ ok: true, value: undefined });
    const own = await aShop({ store: storeOn(name) });
    expect(own.shop.value.entries.size).toBe(0);
  });
});
