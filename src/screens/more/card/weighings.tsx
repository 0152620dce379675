import { Icon } from '../../../parts/blocks/icons';
import { Section } from '../../../parts/blocks/page';
import { typedWords } from '../../../parts/fields/typed-words';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { undoWithToast } from '../../../parts/frame/undo';
import type { CardWeighing, TestCard } from '../../../shop/card/cards';
import { TOLD_WORDS as WORDS } from '../../../words/piece/card';
import { whenWords } from '../../../words/times';
import { bareText } from './bare-text';

/** Everything that the card was weighed, the newest first, each with its undo. */
export function Weighings({ card }: { readonly card: TestCard }) {
  const { shop, actions, nowMs } = useShop();
  return (
    <Section title={WORDS.weighings}>
      <ol class="history">
        {card.weighings.toReversed().map((line) => (
          <li key={line.id}>
            <div class="history-text">
              <p class="digits">
                <strong>{line.mass.typed.text} g</strong>{' '}
                <span class="quiet">{whenWords(line.atMs, nowMs.value)}</span>
              </p>
              <Noted line={line} />
            </div>
            <button
              type="button"
              class="undo"
              aria-label={WORDS.undo(line.mass.typed.text)}
              onClick={() => void undoWithToast(actions, line.id, WORDS.weighed)}
            >
              <Icon name="undo" />
            </button>
          </li>
        ))}
        <li>
          <div class="history-text">
            <p class="digits">
              <strong>{bareText(card, shop.value)} g</strong>{' '}
              <span class="quiet">
                {WORDS.bare}, {whenWords(card.madeMs, nowMs.value)}
              </span>
            </p>
          </div>
        </li>
      </ol>
    </Section>
  );
}

function Noted({ line: { warm, leftOut, division } }: { readonly line: CardWeighing }) {
  const units = useUnits();
  const notes = [
    ...(warm
      ? [WORDS.warm(typedWords(warm.temperature.typed, units), typedWords(warm.time.typed, units))]
      : []),
    ...(leftOut ? [WORDS.leftOut[leftOut]] : []),
    ...(division ? [WORDS.otherScale] : []),
  ];
  return notes.length > 0 ? <p class="small quiet">{notes.join('; ')}</p> : null;
}
