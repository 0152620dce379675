import { Notice } from '../../parts/blocks/notice';
import { linkTo } from '../../parts/frame/route';
import type { Fault } from '../../planner/fault';
import { faultSentence } from '../../planner/say';
import { HOURS_WORDS, PLAN_WORDS } from '../../words/plan/plan';
import { useNames } from './use-plan';

/** Why there is no plan, each fault with the way to where it is mended. */
export function Faults({ faults }: { readonly faults: readonly Fault[] }) {
  const names = useNames();
  return (
    <Notice kind="stop" title={PLAN_WORDS.faultTitle}>
      <ul class="faults">
        {faults.map((fault) => (
          <li key={JSON.stringify(fault)}>
            {'pieceId' in fault ? (
              <a href={linkTo('plan', fault.pieceId)}>
                {PLAN_WORDS.faultOf(
                  names.piece(fault.pieceId),
                  'stepId' in fault ? names.step(fault.stepId) : undefined,
                )}
              </a>
            ) : (
              <a href={linkTo('plan', 'hours')}>{HOURS_WORDS.title}</a>
            )}
            <p>{faultSentence(fault)}</p>
          </li>
        ))}
      </ul>
    </Notice>
  );
}
