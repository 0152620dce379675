import type { Estimate } from '../../../estimator/estimate';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { Fold } from '../../../parts/blocks/fold';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { glued } from '../../../words/glued';
import { INPUT_WORDS } from '../../../words/piece/why';
import { inputsOf } from './inputs';

/** What the estimate was worked out from, each with its origin. */
export function InputList({ piece, estimate }: { readonly piece: Piece; readonly estimate: Estimate }) {
  const { shop } = useShop();
  return (
    <Fold title={INPUT_WORDS.title}>
      <dl class="fact-list">
        {inputsOf(piece, shop.value, estimate, useUnits()).map(({ key, term, text, origin }) => (
          <div key={key}>
            <dt>{term}</dt>
            <dd>
              {glued(text)} <span class="origin">{INPUT_WORDS.origins[origin]}</span>
            </dd>
          </div>
        ))}
      </dl>
    </Fold>
  );
}
