import type { Belief, EstimateRequest, FilmCheck } from '../../estimator/estimate';
import type { Shop } from '../../logbook/fold/fold';
import type { Jar } from '../../logbook/fold/mix/jars';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { type Result, succeed } from '../../result';
import { withoutRetarder } from '../../shop/jar/film';
import {
  type HistoryFault,
  type Stack,
  stackHistory,
  stackOf,
  type TimedHistory,
} from '../../shop/stack/history';
import { again } from '../../shop/stack/stack-events';
import { thinnerLast, WHAT_IF, type WhatIf, warmerFrom } from './what-if';

/** What the estimator is asked, and the instant from which its seconds count. */
export interface TimedRequest {
  readonly request: EstimateRequest;
  readonly startMs: number;
}

/** What the estimator is asked about a piece now, as data that a worker can be sent. */
export function requestFor(
  piece: Piece,
  shop: Shop,
  nowMs: number,
  belief?: Belief,
): Result<TimedRequest, HistoryFault> {
  const told = stackHistory(piece, shop);
  if (!told.ok) return told;
  const { history, startMs } = told.value;
  const nowS = Math.max(0, (nowMs - startMs) / 1000);
  const nextCoat = again(history.events, nowS);
  return succeed({
    startMs,
    request: {
      history,
      nowS,
      checks: checksOf(piece, startMs),
      whatIf: whatIfs(piece, shop, told.value, nowS),
      ...(belief && { belief }),
      ...(nextCoat && { nextCoat }),
    },
  });
}

/** What was found when the film was tried since the first coat; blush tells nothing of drying. */
export function checksOf({ checks }: Pick<Piece, 'checks'>, startMs: number): FilmCheck[] {
  return checks.flatMap(({ test, result, atMs }) => {
    const atS = (atMs - startMs) / 1000;
    return test === 'blush' || atS < 0 ? [] : [{ atS, test, passes: result === 'passes' }];
  });
}

function whatIfs(piece: Piece, shop: Shop, { history }: TimedHistory, nowS: number) {
  const asked: { name: WhatIf; history: TimedHistory['history'] }[] = [
    { name: 'warmer', history: warmerFrom(history, nowS, WHAT_IF.byK) },
    { name: 'cooler', history: warmerFrom(history, nowS, -WHAT_IF.byK) },
    { name: 'thinner-coats', history: thinnerLast(history, WHAT_IF.share) },
  ];
  const plain = withoutAnyRetarder(piece, shop);
  return plain ? [...asked, { name: 'no-retarder' as const, history: { ...history, ...plain } }] : asked;
}

/** The stack as it would be had no coat held retarder; undefined where none did. */
function withoutAnyRetarder(piece: Piece, shop: Shop): Stack | undefined {
  if (!piece.coats.some(({ jar }) => shop.jars.get(jar)?.retarder)) return undefined;
  const jars = new Map(piece.coats.flatMap(({ jar: id }) => plainJar(id, shop)));
  const laid = stackOf(piece, { ...shop, jars });
  return laid.ok ? laid.value.stack : undefined;
}

function plainJar(id: string, { jars }: Shop): [string, Jar][] {
  const jar = jars.get(id);
  return jar ? [[id, withoutRetarder(jar)]] : [];
}
