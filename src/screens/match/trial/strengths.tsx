import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import type { Advice } from '../../../shop/colour/advice';
import { glued } from '../../../words/glued';
import { NEXT_WORDS as WORDS } from '../../../words/match/next';
import { numberWords, percentWords } from '../../../words/quantities';

interface StrengthsProps {
  readonly advice: Extract<Advice, { kind: 'advice' }>;
  readonly name: (ingredient: string) => string;
}

/** What the tinters have turned out to be worth, and what the advice rests on. */
export function Strengths({ advice, name }: StrengthsProps) {
  const { strengths, trialsUsed, isSpectral } = advice;
  const earlier = strengths.flatMap((one) => one.earlier);
  const count = new Set(earlier.map(({ trial }) => trial)).size;
  return (
    <>
      {count > 0 && <p class="quiet small">{WORDS.learnedEarlier(count)}</p>}
      <details class="caution-more">
        <summary>{WORDS.strengths}</summary>
        <dl class="facts">
          {strengths.map(({ ingredient, factor, doubt, from, earlier: own }) => (
            <div key={ingredient}>
              <dt>{name(ingredient)}</dt>
              <dd class="digits">
                {glued(WORDS.strength(numberWords(factor, 2), percentWords(doubt)))}
                <small>{WORDS.strengthFrom[from]}</small>
                {own.length > 0 && <small>{WORDS.learnedEarlier(own.length)}</small>}
              </dd>
            </div>
          ))}
        </dl>
        <p class="quiet small">{WORDS.learned(trialsUsed)}</p>
        <EarlierMatches ids={[...new Set(earlier.map(({ match }) => match))]} />
        <p class="quiet small">{isSpectral ? WORDS.model.spectral : WORDS.model.bands}</p>
      </details>
    </>
  );
}

/** Where to see what the strengths were learned from, the newest first. */
function EarlierMatches({ ids }: { readonly ids: readonly string[] }) {
  const { matches } = useShop().shop.value;
  const known = ids.flatMap((id) => matches.get(id) ?? []).toReversed();
  if (known.length === 0) return null;
  return (
    <>
      <p class="quiet small">{WORDS.learnedIn}</p>
      <ul class="plain-list">
        {known.map(({ id, name }) => (
          <li key={id}>
            <a href={linkTo('match', id)}>{name}</a>
          </li>
        ))}
      </ul>
    </>
  );
}
