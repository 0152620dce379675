import type { Outlook } from '../../actions/outlook/outlook';
import { factsOf } from '../../actions/verdicts/facts-of';
import type { Piece } from '../../logbook/fold/pieces';
import { Icon } from '../../parts/frame/icons';
import { useShop } from '../../parts/frame/shop-context';
import { MomentTime } from '../../parts/time/moment-time';
import { TimeBand } from '../../parts/time/time-band';
import { momentSign } from '../../parts/verdict/moment-sign';
import type { Facts } from '../../verdicts/facts';
import type { Moment } from '../../verdicts/moments';
import { bandSentence, MOMENT_WORDS, PERHAPS_HINT } from '../../words/piece/moments';
import { bandWords } from '../../words/times';

interface MilestoneListProps {
  readonly piece: Piece;
  readonly outlook: Outlook | undefined;
}

/** From minutes to months on one line: equal steps are equal ratios of time since the last coat. */
const alongFrom = (lastCoatMs: number) => (atMs: number) =>
  Math.log10(Math.max(60, (atMs - lastCoatMs) / 1000));

/** The five moments of a piece, each with its band on one common line. */
export function MilestoneList({ piece, outlook }: MilestoneListProps) {
  const { shop, nowMs: now } = useShop();
  const nowMs = now.value;
  const facts = factsOf({ shop: shop.value, piece, outlook, nowMs });
  const { moments } = facts;
  const along = alongFrom(piece.coats.at(-1)?.atMs ?? piece.startedMs);
  const ends = moments.flatMap(({ likelyMs, lateMs }) =>
    [likelyMs, lateMs].filter(Number.isFinite).map(along),
  );
  const axis = { along, from: along(0), to: Math.max(...ends, along(nowMs)) };
  return (
    <ol class="milestones">
      {moments.map((moment) => (
        <MilestoneLine key={moment.name} facts={facts} moment={moment} axis={axis} />
      ))}
    </ol>
  );
}

interface Axis {
  readonly along: (atMs: number) => number;
  readonly from: number;
  readonly to: number;
}

interface MilestoneLineProps {
  readonly facts: Facts;
  readonly moment: Moment;
  readonly axis: Axis;
}

function MilestoneLine({ facts, moment, axis: { along, from, to } }: MilestoneLineProps) {
  const { nowMs } = facts;
  const { name, state, earliestMs, likelyMs, lateMs } = moment;
  const { likely, earliest, late } = bandWords(moment, nowMs);
  const { icon, kind, word } = momentSign(moment, facts);
  return (
    <li>
      <MomentTime moment={moment} nowMs={nowMs} size="row" />
      <p class="state" data-kind={kind}>
        <Icon name={icon} />
        {word}
      </p>
      {state === 'perhaps' && <p class="hint">{PERHAPS_HINT}</p>}
      <TimeBand
        describe={bandSentence(MOMENT_WORDS[name], likely, earliest, late)}
        {...{ from, to }}
        earliest={along(earliestMs)}
        likely={along(likelyMs)}
        late={along(lateMs)}
        now={along(nowMs)}
      />
    </li>
  );
}
