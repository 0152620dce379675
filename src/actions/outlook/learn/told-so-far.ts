import type { Band, Milestone } from '../../../estimator/estimate';
import { isCuring } from '../../../estimator/finishes/finish-law';
import type { Estimator } from '../../../estimator/run/client';
import type { Entry } from '../../../logbook/entry';
import { createFold, type Shop } from '../../../logbook/fold/fold';
import type { Check } from '../../../logbook/fold/piece/pieces';
import { inOrder } from '../../../logbook/ids/order';
import { cardsOf, counted } from '../../../shop/card/cards';
import { cardRequest } from '../../../shop/card/request';
import { type Stand, standById, standsOf } from '../../../shop/zone/stands';
import type { CardOutlook } from '../card-outlook';
import { lawOutlook } from '../law-outlook';
import type { Outlook } from '../outlook';
import { requestFor } from '../request';
import { movedToSheet } from '../to-sheet';
import { productOf, taughtTo } from './taught';

/** A date as it stood when the last coat was on, and what was then found. Times in milliseconds after that coat. */
export interface Told {
  readonly stand: string;
  readonly name: string;
  readonly finish: string;
  /** What was learned of it holds for the others with it. */
  readonly product: string;
  /** What it is called on its jar. */
  readonly jar: string;
  readonly test: Check['test'];
  readonly lastCoatMs: number;
  readonly earliest: number;
  readonly likely: number;
  readonly late: number;
  /** Between the last check that failed and the first that passed. */
  readonly found: number;
}

/** A date that can be held against what was found: which place, by which test, between which times. */
interface Found {
  readonly stand: Stand;
  readonly test: Check['test'];
  readonly lastCoatMs: number;
  readonly found: number;
  readonly asked: Milestone;
}

/** What each test asks for. A lacquer is told no date for its last print; what cures can be coated again from then on. */
const asks = (test: Check['test'], finish = ''): Milestone | undefined =>
  ({ gum: 'level', smell: 'rubOut', print: isCuring(finish) ? 'recoat' : undefined, blush: undefined })[
    test
  ] as Milestone | undefined;
const TESTS: readonly Check['test'][] = ['print', 'gum', 'smell'];
/** A check that failed and one that passed further apart than this tell next to nothing (judgement, no source). */
const MOST_APART = 3;

/** What was found on the pieces of a shop by checks on both sides of a moment, in the order of their last coats. */
export function foundIn(shop: Shop): readonly Found[] {
  const stands = [...shop.pieces.values()].flatMap((piece) => standsOf(piece, shop));
  return stands
    .flatMap((stand) => foundOn(stand, shop))
    .sort((one, other) => one.lastCoatMs - other.lastCoatMs);
}

function foundOn(stand: Stand, { jars }: Shop): readonly Found[] {
  const { coats, checks } = stand.piece;
  const last = coats.at(-1);
  if (!last) return [];
  return TESTS.flatMap((test) => {
    const asked = asks(test, jars.get(last.jar)?.product.finish);
    const own = checks.filter((one) => one.test === test && one.atMs > last.atMs);
    const pass = own.find(({ result }) => result === 'passes');
    const fail = pass && own.findLast(({ result, atMs }) => result === 'fails' && atMs < pass.atMs);
    if (!asked || !pass || !fail) return [];
    const [from, to] = [fail.atMs - last.atMs, pass.atMs - last.atMs];
    return to / from > MOST_APART
      ? []
      : [{ stand, test, lastCoatMs: last.atMs, asked, found: Math.sqrt(from * to) }];
  });
}

/** What was logged, as it is known now: with every correction, at the time that it says, and without what was undone. */
const asTheyStand = ({ entries, struck, corrected }: Shop): readonly Entry[] =>
  [...entries.values()]
    .filter(({ id, kind }) => kind !== 'struck' && kind !== 'corrected' && !struck.has(id))
    .map((entry) => corrected.get(entry.id)?.entry ?? entry)
    .sort(inOrder);

/**
 * Every date that can be scored, as it stood at its last coat: with what was logged and learned by then, and nothing later, so that no
 * check is held against a date that it moved itself. What was undone or corrected since is taken as it is now.
 */
export async function toldSoFar(shop: Shop, estimator: Estimator): Promise<readonly Told[]> {
  const found = foundIn(shop);
  const lines = asTheyStand(shop);
  const grow = createFold();
  let then = grow([]);
  const known = new Map<string, Outlook>();
  const told: Told[] = [];
  let next = 0;

  async function outlookOf({ id, piece }: Stand, nowMs: number, taught: ReturnType<typeof taughtTo>) {
    const byLaw = lawOutlook(piece, then, nowMs, taught.law);
    if (byLaw) return byLaw;
    const asked = requestFor(piece, then, nowMs, taught.diffusivity);
    if (!asked.ok) return undefined;
    const { startMs, request } = asked.value;
    const { nextCoat: _, ...alone } = { ...request, whatIf: [] };
    const result = await estimator.estimate(alone).result.catch(() => undefined);
    const estimate = result && (await movedToSheet(result, alone, piece, then, estimator));
    return estimate && ({ state: 'ready', estimate, startMs, stale: false, id } as const);
  }

  /** What every other piece and card had taught by then; each is worked out once for the checks that it had. */
  async function learnedBy(nowMs: number) {
    const outlooks = new Map<string, Outlook>();
    for (const piece of then.pieces.values())
      for (const stand of standsOf(piece, then)) {
        const key = `${stand.id} ${stand.piece.checks.length}`;
        if (stand.piece.checks.length === 0) continue;
        const alone = { diffusivity: undefined, law: undefined };
        const outlook = known.get(key) ?? (await outlookOf(stand, nowMs, alone));
        if (!outlook) continue;
        known.set(key, outlook);
        outlooks.set(stand.id, outlook);
      }
    const cards = new Map<string, CardOutlook>();
    for (const card of cardsOf(then).values()) {
      const request = counted(card).length > 0 ? cardRequest(card, then, nowMs) : undefined;
      if (!request?.ok) continue;
      const { card: plain, startMs } = request.value;
      const reading = await estimator
        .weigh({ card: { ...plain, lookAtS: [] } })
        .result.catch(() => undefined);
      if (reading) cards.set(card.id, { state: 'ready', reading, startMs, isGuessed: false });
    }
    return { outlooks, cards };
  }

  for (const { stand: now, test, lastCoatMs, asked, found: foundAfter } of found) {
    const from = next;
    while (Date.parse(lines[next]?.at ?? '') <= lastCoatMs) next++;
    then = grow(lines.slice(from, next));
    const stand = standById(now.id, then);
    if (!stand) continue;
    const taught = taughtTo(stand, { shop: then, ...(await learnedBy(lastCoatMs)) });
    const outlook = await outlookOf(stand, lastCoatMs, taught);
    const jar = shop.jars.get(stand.piece.coats.at(-1)?.jar ?? '');
    if (outlook?.state !== 'ready' || !jar) continue;
    const { earliestS, likelyS, lateS }: Band = outlook.estimate.milestones[asked];
    const after = (s: number): number => outlook.startMs + s * 1000 - lastCoatMs;
    told.push({
      stand: now.id,
      name: now.zone?.name ?? now.piece.name,
      finish: jar.product.finish,
      product: productOf(stand.piece, shop) ?? '',
      jar: jar.name,
      test,
      lastCoatMs,
      earliest: after(earliestS),
      likely: after(likelyS),
      late: after(lateS),
      found: foundAfter,
    });
  }
  return told;
}
