import type { Refused } from '../../../actions/shop';
import { REFUSED } from '../../../words/common';
import { LinkButton } from '../../blocks/button';
import { Notice } from '../../blocks/notice';
import { wayOut } from '../../frame/say-refused';

/** Why nothing was logged, beside the button that asked for it. */
export function Refusal({ refused }: { readonly refused: Refused | undefined }) {
  if (!refused) return null;
  const way = wayOut(refused);
  return (
    <Notice kind="stop" title={REFUSED} isNew>
      <p>{refused.sentence}</p>
      {way && (
        <div class="acts">
          <LinkButton icon="next" href={way.href}>
            {way.label}
          </LinkButton>
        </div>
      )}
    </Notice>
  );
}
