import 'fake-indexeddb/auto';
import { describe, expect, test, vi } from 'vitest';
import { WEIGHED_AT } from '../../../src/estimator/belief';
import { done, worker } from '../a-shop';

import {
  estimateOf,
  HOUR_MS,
  percent,
  pieceWithCoat,
  RESTING_MS,
  ready,
  settled,
  watched,
} from './watched-shop';

describe('an outlook', () => {
  test('waits until the entries rest', async () => {
    const { open, asked } = await watched(estimateOf, RESTING_MS);
    const { piece, coat } = await pieceWithCoat(open);
    for (let n = 0; n < 4; n++) {
      await vi.advanceTimersByTimeAsync(RESTING_MS - 1);
      done(await open.actions.layCoat(coat));
    }
    expect(await ready(open, piece)).toMatchObject({ estimate: { now: { dryM: 5 } } });
    expect(asked.map(({ history }) => history.events.length)).toEqual([5]);
  });

  test('of the piece on screen comes first, else of the one worked on last', async () => {
    const { open, asked } = await watched(estimateOf, RESTING_MS);
    const { jar, piece: oldest } = await pieceWithCoat(open, 3 * HOUR_MS);
    await pieceWithCoat(open, 2 * HOUR_MS, jar);
    const { piece: newest } = await pieceWithCoat(open, HOUR_MS, jar);
    open.look(oldest);
    await vi.waitFor(() => expect(asked).toHaveLength(3));
    expect(asked.map(({ nowS }) => nowS / 3600)).toEqual([3, 1, 2]);
    await ready(open, newest);
  });

  test('of a closed piece is worked out only where it is looked at', async () => {
    const { open, asked } = await watched(estimateOf, RESTING_MS);
    const { piece } = await pieceWithCoat(open);
    done(await open.actions.closePiece(piece));
    await vi.advanceTimersByTimeAsync(RESTING_MS + 50);
    expect(asked).toHaveLength(0);
    open.look(piece);
    await ready(open, piece);
  });

  // As after a restart, when nobody has looked at what was finished.
  test('of a closed piece with a check teaches its product, worked out once and after all that is open', async () => {
    const { open, asked, pass } = await watched(
      (request) => estimateOf(request, request.checks.length > 0 ? WEIGHED_AT.map((_, n) => -n) : undefined),
      RESTING_MS,
    );
    const { piece: closed, jar } = await pieceWithCoat(open, 3 * HOUR_MS);
    done(await open.actions.logCheck({ piece: closed, test: 'print', result: 'fails' }));
    done(await open.actions.closePiece(closed));
    const { piece } = await pieceWithCoat(open, HOUR_MS, jar);
    await vi.waitFor(() => expect(asked).toHaveLength(3));
    expect(asked.map(({ checks, belief }) => [checks.length, belief !== undefined])).toEqual([
      [0, false],
      [1, false],
      [0, true],
    ]);
    await ready(open, piece);
    pass(2 * HOUR_MS);
    await vi.waitFor(() => expect(asked).toHaveLength(4));
    await vi.advanceTimersByTimeAsync(RESTING_MS + 50);
    expect(asked.filter(({ checks }) => checks.length > 0)).toHaveLength(1);
  });

  test.each([
    { losses: 1, state: 'ready', tries: 2 },
    { losses: 2, state: 'failed', tries: 2 },
  ])('is asked for once more where the worker was lost: $losses times, then it is $state', async (row) => {
    let tries = 0;
    const { open } = await watched(undefined, 0, () => {
      if (++tries <= row.losses) throw new Error('ended by the phone');
      return worker(estimateOf);
    });
    const { piece } = await pieceWithCoat(open);
    await vi.waitFor(() => expect(open.outlooks.value.get(piece)?.state).toBe(row.state));
    await settled();
    expect(tries).toBe(row.tries);
  });

  test('of a piece that failed comes after all others, even where it is looked at', async () => {
    const { open, asked } = await watched((request) =>
      request.history.events.length > 1
        ? { ok: false, why: 'too-thick', message: 'no' }
        : estimateOf(request),
    );
    const { piece, coat, jar } = await pieceWithCoat(open);
    const { piece: other } = await pieceWithCoat(open, HOUR_MS, jar);
    await ready(open, other);
    done(await open.actions.layCoat(coat));
    await vi.waitFor(() => expect(open.outlooks.value.get(piece)?.state).toBe('failed'));
    open.look(piece);
    asked.length = 0;
    const air = {
      temperature: { text: '25', unit: 'C' },
      humidity: percent('40'),
      movement: 'booth',
    } as const;
    done(await open.actions.readAir(air));
    await vi.waitFor(() => expect(asked.map(({ stack }) => stack)).toEqual([other, piece]));
  });
});
