import type { ClearedBy, Reason } from '../../verdicts/reason';
import type { Verdict } from '../../verdicts/verdict';
import { NOTICE_WORDS } from '../../words/common';
import { whenWords } from '../../words/times';
import { CLEARS_WORDS, OVERRIDE_WORDS, SOURCE_WORDS } from '../../words/verdicts/reasons';
import { Icon } from '../blocks/icons';
import type { NoticeKind } from '../blocks/notice';
import { linkTo } from '../frame/route';
import { useShop, useUnits } from '../frame/shop-context';
import { reasonWords } from './reason-words';

interface ReasonsProps {
  readonly pieceId: string;
  readonly verdict: Verdict | undefined;
  /** The page says the times itself. */
  readonly isTimeShown?: boolean | undefined;
}

/** What speaks against an act, or is to be minded, the heaviest first; a wait stands in the time beside it. */
export function Reasons({ pieceId, verdict, isTimeShown }: ReasonsProps) {
  const shown =
    verdict?.reasons.filter(
      ({ rule, says }) => says !== 'computing' && !(isTimeShown && rule === 'estimate'),
    ) ?? [];
  return (
    <>
      {shown.map((reason) => (
        <ReasonNotice key={reason.rule} pieceId={pieceId} reason={reason} />
      ))}
    </>
  );
}

function ReasonNotice({ pieceId, reason }: { readonly pieceId: string; readonly reason: Reason }) {
  const nowMs = useShop().nowMs.value;
  const units = useUnits();
  const { override, clearedBy, source } = reason;
  const kind = kindOf(reason);
  return (
    <div class="notice reason" data-kind={kind}>
      <Icon name={kind} />
      <div>
        <p>
          <strong class="reason-word">{NOTICE_WORDS[kind]}.</strong> {reasonWords(reason, units, nowMs)}{' '}
          <span class="quiet small">{SOURCE_WORDS[source]}</span>
        </p>
        {override && <p>{OVERRIDE_WORDS.setAside(whenWords(override.atMs, nowMs), override.reason)}</p>}
        {clearedBy && (
          <a class="reason-way" href={wayTo(clearedBy, pieceId)}>
            {CLEARS_WORDS[clearedBy]}
          </a>
        )}
      </div>
    </div>
  );
}

const kindOf = ({ weight, override }: Reason): NoticeKind => {
  if (weight === 'hold') return override ? 'caution' : 'stop';
  return weight === 'note' ? 'note' : 'caution';
};

/** The page on which a hold is cleared. */
function wayTo(clearedBy: ClearedBy, pieceId: string): string {
  switch (clearedBy) {
    case 'lead-test':
    case 'lead-found':
    case 'spot-test':
    case 'look':
      return linkTo('piece', pieceId, 'old');
    case 'air':
      return linkTo('air');
    case 'jar':
      return linkTo('mix');
    case 'barrier':
      return `${linkTo('lay')}?piece=${pieceId}`;
    case 'check':
      return linkTo('piece', pieceId, 'check');
    case 'scuff':
      return linkTo('piece', pieceId, 'sand');
  }
}
