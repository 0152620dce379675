import type { Refused } from '../../actions/shop';
import { REFUSED } from '../../words/common';
import { TO_PLACE } from '../../words/frame/refusals';
import { LinkButton } from '../frame/button';
import { Notice } from '../frame/notice';
import { linkTo } from '../frame/route';

/** Why nothing was logged, beside the button that asked for it. */
export function Refusal({ refused }: { readonly refused: Refused | undefined }) {
  if (!refused) return null;
  return (
    <Notice kind="stop" title={REFUSED} isNew>
      <p>{refused.sentence}</p>
      {refused.way && (
        <div class="acts">
          <LinkButton
            icon="next"
            href={`${linkTo(...refused.way)}?back=${encodeURIComponent(location.hash)}`}
          >
            {TO_PLACE[refused.way[0]]}
          </LinkButton>
        </div>
      )}
    </Notice>
  );
}
