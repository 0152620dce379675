import { estimateByLaw } from '../../estimator/finishes/estimate-by-law';
import type { LawBelief } from '../../estimator/finishes/law-belief';
import type { LawHistory } from '../../estimator/finishes/law-history';
import { NotKnownError } from '../../estimator/known';
import type { Shop } from '../../logbook/fold/fold';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { lawHistory, type TimedLawHistory } from '../../shop/stack/law-history';
import { NO_OUTLOOK_WORDS } from '../../words/frame/actions';
import type { Outlook } from './outlook';
import { checksOf } from './request';
import { WHAT_IF, type WhatIf } from './what-if';

/** The outlook of a piece whose finish dries by water or cures; undefined for every other. It takes a few milliseconds. */
export function lawOutlook(piece: Piece, shop: Shop, nowMs: number, belief?: LawBelief): Outlook | undefined {
  try {
    return outlookOf(piece, shop, nowMs, belief);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const why = error instanceof NotKnownError ? 'unsolvable' : 'no-room-for-lacquer';
    return { state: 'failed', message: NO_OUTLOOK_WORDS[why] };
  }
}

function outlookOf(piece: Piece, shop: Shop, nowMs: number, belief?: LawBelief): Outlook | undefined {
  const told = lawHistory(piece, shop);
  if (!told) return undefined;
  const { finish, history, startMs } = told;
  const nowS = Math.max(0, (nowMs - startMs) / 1000);
  const last = history.coats.at(-1);
  const whatIf: { name: WhatIf; history: LawHistory }[] = [
    { name: 'warmer', history: warmerFrom(history, nowS, WHAT_IF.byK) },
    { name: 'cooler', history: warmerFrom(history, nowS, -WHAT_IF.byK) },
    { name: 'thinner-coats', history: thinnerLast(history) },
  ];
  const nextCoat = last && { ...last, atS: nowS };
  const estimate = estimateByLaw(finish, {
    history,
    nowS,
    checks: ownChecks(piece, shop, told),
    whatIf,
    ...(belief && { belief }),
    ...(nextCoat && { nextCoat }),
  });
  return { state: 'ready', estimate, startMs, stale: false };
}

/** The checks made since this finish went on: before that it was another film that was tried. */
function ownChecks({ coats, checks }: Piece, { jars }: Shop, { finish, startMs }: TimedLawHistory) {
  const laid = coats.filter(({ how }) => how !== 'flash');
  const before = laid.findLastIndex(({ jar }) => jars.get(jar)?.product.finish !== finish);
  const sinceMs = laid[before + 1]?.atMs ?? startMs;
  return checksOf({ checks: checks.filter(({ atMs }) => atMs >= sinceMs) }, startMs);
}

function warmerFrom(history: LawHistory, fromS: number, byK: number): LawHistory {
  const air = history.air.flatMap((span, i) => {
    const endS = history.air[i + 1]?.fromS ?? Number.POSITIVE_INFINITY;
    const warmer = { ...span, fromS: Math.max(span.fromS, fromS), temperatureK: span.temperatureK + byK };
    if (endS <= fromS) return [span];
    return span.fromS < fromS ? [span, warmer] : [warmer];
  });
  return { ...history, air };
}

function thinnerLast(history: LawHistory): LawHistory {
  const coats = history.coats.map((coat, i) =>
    i === history.coats.length - 1 ? { ...coat, dryM: coat.dryM * WHAT_IF.share } : coat,
  );
  return { ...history, coats };
}
