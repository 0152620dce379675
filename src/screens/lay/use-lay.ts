import type { ReadonlySignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { coatCardWith } from '../../actions/card/log-card';
import type { Actions } from '../../actions/shop';
import { overrideHolds } from '../../actions/verdicts/override-hold';
import type { Form } from '../../parts/fields/form/use-form';
import { sayFirst } from '../../parts/frame/draw-once';
import { fromHere, linkTo } from '../../parts/frame/route';
import { sayRefused } from '../../parts/frame/say-refused';
import { useShop } from '../../parts/frame/shop-context';
import { showToast } from '../../parts/frame/toast';
import { sayLogged } from '../../parts/frame/undo';
import { isReasonWhole } from '../../parts/verdict/why-anyway';
import { holdsOf } from '../../verdicts/verdict';
import { ROUND_WORDS } from '../../words/piece/acts';
import { FILM_WORDS } from '../../words/piece/coat/film';
import { LAY_WORDS } from '../../words/piece/coat/lay';
import { type CoatDraft, filmSaid, isFilmWhole, standOfCoat } from './coat-draft';
import { type AirDraft, isAirWhole } from './fields/air-draft';
import { cardCoated } from './fields/card-too';
import type { JudgedCoat } from './judged-coat';
import { layRound } from './lay-round';

/** A coat as it is being said, and what the judge says of it. */
interface Saying {
  readonly draft: ReadonlySignal<CoatDraft>;
  readonly air: ReadonlySignal<AirDraft>;
  readonly form: Form;
  /** Why it goes on although it is held. */
  readonly reason: ReadonlySignal<string>;
  readonly judged: readonly JudgedCoat[];
}

/** Logs the air where it was read again, then the coat; then says so, with the undo, on the piece's page. */
export function useLay(
  { draft, air, form, reason, judged }: Saying,
  instantMs: () => number | undefined,
): (event: Event) => void {
  const { actions, needs, shop } = useShop();
  const laidBefore = useRef(new Map<string, string>()).current;
  const airBefore = useRef<{ readonly draft: AirDraft; readonly id: string | undefined }>(undefined);

  async function lay(): Promise<void> {
    const goOn = fromHere();
    const { piece = '', also, jar = '', how, zone, oil } = draft.value;
    const pad = how === 'pad' && oil !== undefined ? { oil } : {};
    const place = zone === undefined ? {} : { zoneId: zone };
    const isWhole = isFilmWhole(draft.value) && isAirWhole(air.value) && isReasonWhole(reason.value);
    const why = reason.value.trim();
    const atMs = instantMs() ?? Number.NaN;
    const round = [piece, ...also];
    const card = cardCoated(draft.value, shop.value);
    const laid = await form.send(isWhole, async () => {
      const known = airBefore.current?.draft === air.value ? airBefore.current : undefined;
      const read = known
        ? ({ ok: true, value: known.id } as const)
        : await airOf(air.value, actions, shop.value.airReadings.at(-1)?.id, atMs);
      if (!read.ok) return read;
      airBefore.current = { draft: air.value, id: read.value };
      const film = filmSaid(draft.value);
      const coat = { jar, how, film, ...pad, ...(read.value && { air: read.value }) };
      const coats = await layRound(round, laidBefore, async (one) => {
        const verdict = judged.find(({ pieceId }) => pieceId === one)?.verdict;
        const said = { piece: one, act: verdict?.act ?? 'coat', reason: reason.value } as const;
        const kept = await overrideHolds(needs, said, verdict && why ? holdsOf(verdict) : []);
        return kept.ok ? actions.layCoat({ piece: one, ...coat, ...(one === piece && place) }, atMs) : kept;
      });
      const onPiece = coats.ok && shop.value.pieces.get(piece)?.coats.find(({ id }) => id === coats.value[0]);
      if (!card || !onPiece) return coats;
      return layRound([...round, card.id], laidBefore, () => coatCardWith(needs, card.id, onPiece));
    });
    if (!laid) return;
    const [first = ''] = laid;
    if (round.length > 1) {
      showToast({
        text: ROUND_WORDS.logged(round.length),
        onUndo: () => void undoAll(actions, laid),
      });
      goOn(linkTo('bench'));
      return;
    }
    const now = standOfCoat(draft.value, shop.value);
    const number = (now?.coats.findIndex(({ id }) => id === first) ?? 0) + 1;
    sayLogged(actions, first, FILM_WORDS.coat(number), LAY_WORDS.laid(number, now?.name ?? ''));
    sayFirst(() => goOn(zone === undefined ? linkTo('piece', piece) : linkTo('piece', piece, 'zone', zone)));
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
    if (!undone.ok) return sayRefused(undone.failure);
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
