import { parseNumber } from '../../logbook/as-typed';
import { typedWords } from '../../parts/fields/typed-words';
import { PieceFace } from '../../parts/film/piece-face';
import { useShop, useUnits } from '../../parts/frame/shop-context';
import { ROUND_WORDS } from '../../words/piece/acts';
import { airLine, LAY_WORDS } from '../../words/piece/coat/lay';
import { COAT_WORDS } from '../../words/piece/piece';
import type { UnitSystem } from '../../words/quantities';
import { agoWords } from '../../words/times';
import { amountShown, type CoatDraft, standOfCoat } from './coat-draft';
import type { AirDraft } from './fields/air-draft';

/** The coat that a tap will log: on what, and how many more. */
export function Summary({ draft }: { readonly draft: CoatDraft }) {
  const piece = standOfCoat(draft, useShop().shop.value);
  if (!piece) return null;
  return (
    <div class="lay-summary">
      <PieceFace piece={piece} standId={draft.zone} />
      <div>
        <p class="row-title">{LAY_WORDS.onPiece(piece.coats.length + 1, piece.name)}</p>
        {draft.also.length > 0 && <p>{ROUND_WORDS.others(draft.also.length)}</p>}
      </div>
    </div>
  );
}

/** "Sprayed, 85 µm wet" */
export const coatLine = (draft: CoatDraft, units: UnitSystem): string =>
  COAT_WORDS.laid(COAT_WORDS.ways[draft.how], filmWordsOf(draft, units));

function filmWordsOf(draft: CoatDraft, units: UnitSystem): string {
  const { by, amount } = amountShown(draft);
  if (by === 'wet') return COAT_WORDS.wet(typedWords(amount, units));
  return by === 'usual'
    ? COAT_WORDS.usual(typedWords(amount, units))
    : COAT_WORDS.passes(parseNumber(draft.passes) ?? Number.NaN, typedWords(amount, units));
}

/** "21 °C, 48 %, gentle, 20 min ago" */
export function useAirLine({ from }: AirDraft): string {
  const { shop, nowMs } = useShop();
  const units = useUnits();
  const last = shop.value.airReadings.at(-1);
  if (from === 'again') return LAY_WORDS.airNew;
  if (from === 'unknown' || !last) return LAY_WORDS.airNone;
  const line = airLine(
    typedWords(last.temperature.typed, units),
    typedWords(last.humidity.typed, units),
    LAY_WORDS.movements[last.movement].label,
  );
  return `${line}, ${agoWords(nowMs.value - last.atMs)}`;
}
