import type { Refused } from '../../actions/shop';
import { REFUSED } from '../../words/common';
import { Notice } from '../frame/notice';

/** Why nothing was logged, beside the button that asked for it. */
export function Refusal({ refused }: { readonly refused: Refused | undefined }) {
  if (!refused) return null;
  return (
    <Notice kind="stop" title={REFUSED} isNew>
      <p>{refused.sentence}</p>
    </Notice>
  );
}
