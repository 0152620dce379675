import { parseNumber } from '../../logbook/as-typed';
import { zonesOf } from '../../logbook/fold/zones';
import { typedWords } from '../../parts/fields/typed-words';
import { PieceFace } from '../../parts/film/piece-face';
import { useShop, useUnits } from '../../parts/frame/shop-context';
import { ROUND_WORDS } from '../../words/piece/acts';
import { airLine, LAY_WORDS } from '../../words/piece/lay';
import { COAT_WORDS } from '../../words/piece/piece';
import type { UnitSystem } from '../../words/quantities';
import { agoWords } from '../../words/times';
import type { AirDraft } from './air-draft';
import { amountShown, type CoatDraft } from './coat-draft';

interface SummaryProps {
  readonly draft: CoatDraft;
  readonly air: AirDraft;
  readonly when: string | undefined;
}

/** The coat that a tap will log, in four lines. */
export function Summary({ draft, air, when }: SummaryProps) {
  const units = useUnits();
  const { shop } = useShop();
  const piece = shop.value.pieces.get(draft.piece ?? '');
  const jar = shop.value.jars.get(draft.jar ?? '');
  if (!piece || !jar) return null;
  const zone = zonesOf(piece.id, shop.value).find(({ zoneId }) => zoneId === draft.zone);
  return (
    <div class="lay-summary">
      <PieceFace piece={piece} />
      <div>
        <p class="row-title">{LAY_WORDS.onPiece(piece.coats.length + 1, piece.name)}</p>
        {zone && <p>{LAY_WORDS.onPlace(zone.name)}</p>}
        {draft.also.length > 0 && <p>{ROUND_WORDS.others(draft.also.length)}</p>}
        <p>{LAY_WORDS.fromJar(jar.name)}</p>
        <p class="digits">{COAT_WORDS.laid(COAT_WORDS.ways[draft.how], filmWordsOf(draft, units))}</p>
        <p class="digits">{when}</p>
        <p class="quiet small digits">
          <AirWords air={air} />
        </p>
      </div>
    </div>
  );
}

function filmWordsOf(draft: CoatDraft, units: UnitSystem): string {
  const { by, amount } = amountShown(draft);
  if (by === 'wet') return COAT_WORDS.wet(typedWords(amount, units));
  return by === 'usual'
    ? COAT_WORDS.usual(typedWords(amount, units))
    : COAT_WORDS.passes(parseNumber(draft.passes) ?? Number.NaN, typedWords(amount, units));
}

function AirWords({ air }: { readonly air: AirDraft }) {
  const { shop, nowMs } = useShop();
  const units = useUnits();
  const last = shop.value.airReadings.at(-1);
  if (air.from === 'again') return <>{LAY_WORDS.airNew}</>;
  if (air.from === 'unknown' || !last) return <>{LAY_WORDS.airNone}</>;
  const line = airLine(
    typedWords(last.temperature.typed, units),
    typedWords(last.humidity.typed, units),
    LAY_WORDS.movements[last.movement].label,
  );
  return <>{LAY_WORDS.airAsRead(line, agoWords(nowMs.value - last.atMs))}</>;
}
