import type { Outlook } from '../../actions/outlook/outlook';
import { factsOf } from '../../actions/verdicts/facts-of';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { Icon } from '../../parts/blocks/icons';
import { useShop } from '../../parts/frame/shop-context';
import { MomentTime } from '../../parts/time/moment-time';
import { WaitAxis, WaitBar } from '../../parts/time/wait-bar';
import { momentSign } from '../../parts/verdict/moment-sign';
import type { Facts } from '../../verdicts/facts';
import type { Moment } from '../../verdicts/moments';
import { ROW_WORDS } from '../../words/bench-rows';
import { MOMENT_WAS, PERHAPS_HINT } from '../../words/piece/moments';
import { useMoved } from './moved-moments';

interface MilestoneListProps {
  readonly piece: Piece;
  readonly outlook: Outlook | undefined;
  /** Whose moments: those of the piece, or of a place on it. */
  readonly standId?: string | undefined;
}

/** The five moments of a piece, each with its band, on the one time axis of the shop. */
export function MilestoneList({ piece, outlook, standId = piece.id }: MilestoneListProps) {
  const { shop, nowMs } = useShop();
  const facts = factsOf({ shop: shop.value, piece, outlook, nowMs: nowMs.value });
  const { moments } = facts;
  const moved = useMoved(standId, moments, nowMs.value);
  return (
    <div class="moments">
      <WaitAxis marks={ROW_WORDS.axis} />
      <ol class="milestones">
        {moments.map((moment) => (
          <MilestoneLine key={moment.name} facts={facts} moment={moment} was={moved.get(moment.name)} />
        ))}
      </ol>
      {moments.some(({ state }) => state === 'perhaps') && <p class="quiet small">{PERHAPS_HINT}</p>}
    </div>
  );
}

interface MilestoneLineProps {
  readonly facts: Facts;
  readonly moment: Moment;
  /** The day that was shown before it moved. */
  readonly was: string | undefined;
}

/** When, how far it has come, and its wait; what may be done already waits no more. */
function MilestoneLine({ facts, moment, was }: MilestoneLineProps) {
  const { nowMs } = facts;
  const { icon, kind, word } = momentSign(moment, facts);
  const isOver = moment.state === 'reached' || moment.state === 'done';
  return (
    <li>
      <MomentTime moment={moment} nowMs={nowMs} size="row" />
      <WaitBar band={isOver ? undefined : moment} nowMs={nowMs} />
      <p class="state" data-kind={kind}>
        <Icon name={icon} />
        {word}
      </p>
      {was && <p class="moment-was small">{MOMENT_WAS(was)}</p>}
    </li>
  );
}
