import type { ReadonlySignal } from '@preact/signals';
import { coatCardWith } from '../../actions/card/log-card';
import type { Actions } from '../../actions/shop';
import { overrideHolds } from '../../actions/verdicts/override-hold';
import type { Form } from '../../parts/fields/use-form';
import { fromHere, linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { showToast } from '../../parts/frame/toast';
import { sayLogged } from '../../parts/frame/undo';
import { isReasonWhole } from '../../parts/verdict/why-anyway';
import { holdsOf, type Verdict } from '../../verdicts/verdict';
import { ROUND_WORDS } from '../../words/piece/acts';
import { FILM_WORDS } from '../../words/piece/film';
import { LAY_WORDS } from '../../words/piece/lay';
import { type AirDraft, isAirWhole } from './air-draft';
import { cardCoated } from './card-too';
import { type CoatDraft, filmSaid, isFilmWhole } from './coat-draft';

/** A coat as it is being said, and what the judge says of it. */
interface Saying {
  readonly draft: ReadonlySignal<CoatDraft>;
  readonly air: ReadonlySignal<AirDraft>;
  readonly form: Form;
  /** Why it goes on although it is held. */
  readonly reason: ReadonlySignal<string>;
  readonly verdict: Verdict | undefined;
}

/** Logs the air where it was read again, then the coat; then says so, with the undo, on the piece's page. */
export function useLay(
  { draft, air, form, reason, verdict }: Saying,
  instantMs: () => number | undefined,
): (event: Event) => void {
  const { actions, needs, shop } = useShop();

  async function lay(): Promise<void> {
    const goOn = fromHere();
    const { piece = '', also, jar = '', how, zone, oil } = draft.value;
    const pad = how === 'pad' && oil !== undefined ? { oil } : {};
    const place = zone === undefined ? {} : { zoneId: zone };
    const isWhole = isFilmWhole(draft.value) && isAirWhole(air.value) && isReasonWhole(reason.value);
    const holds = verdict && reason.value.trim() ? holdsOf(verdict) : [];
    const atMs = instantMs() ?? Number.NaN;
    const others: string[] = [];
    const onCard: string[] = [];
    const card = cardCoated(draft.value, shop.value);
    const laid = await form.send(isWhole, async () => {
      const read = await airOf(air.value, actions, shop.value.airReadings.at(-1)?.id, atMs);
      if (!read.ok) return read;
      const kept = await overrideHolds(
        needs,
        { piece, act: verdict?.act ?? 'coat', reason: reason.value },
        holds,
      );
      if (!kept.ok) return kept;
      const film = filmSaid(draft.value);
      const coat = { jar, how, film, ...pad, ...(read.value && { air: read.value }) };
      const first = await actions.layCoat({ piece, ...coat, ...place }, atMs);
      if (!first.ok) return first;
      others.length = 0;
      const onPiece = shop.value.pieces.get(piece)?.coats.find(({ id }) => id === first.value.id);
      const carded = card && onPiece && (await coatCardWith(needs, card.id, onPiece));
      if (carded && !carded.ok) return carded;
      if (carded) onCard.push(carded.value.id);
      for (const other of also) {
        const more = await actions.layCoat({ piece: other, ...coat }, atMs);
        if (!more.ok) return more;
        others.push(more.value.id);
      }
      return first;
    });
    if (!laid) return;
    if (others.length > 0) {
      const all = [laid.id, ...others, ...onCard];
      showToast({
        text: ROUND_WORDS.logged(1 + others.length),
        onUndo: () => void undoAll(actions, all),
      });
      goOn(linkTo('bench'));
      return;
    }
    const now = shop.value.pieces.get(piece);
    const number = (now?.coats.findIndex(({ id }) => id === laid.id) ?? 0) + 1;
    sayLogged(actions, laid.id, FILM_WORDS.coat(number), LAY_WORDS.laid(number, now?.name ?? ''));
    goOn(zone === undefined ? linkTo('piece', piece) : linkTo('piece', piece, 'zone', zone));
  }

  return (event) => {
    event.preventDefault();
    void lay();
  };
}

/** Takes a round back, the last coat first. */
async function undoAll(actions: Actions, coats: readonly string[]): Promise<void> {
  for (const id of coats.toReversed()) {
    const undone = await actions.undo(id);
    if (!undone.ok) return showToast({ text: undone.failure.sentence });
  }
}

/** The id of the reading that goes with the coat; a new one is logged at the coat's own time. */
async function airOf(air: AirDraft, actions: Actions, lastId: string | undefined, atMs: number) {
  if (air.from === 'last') return { ok: true, value: lastId } as const;
  if (air.from === 'unknown') return { ok: true, value: undefined } as const;
  const { temperature, humidity, movement } = air;
  const read = await actions.readAir({ temperature, humidity, movement }, atMs);
  return read.ok ? ({ ok: true, value: read.value.id } as const) : read;
}
