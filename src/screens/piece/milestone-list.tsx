import type { Outlook } from '../../actions/outlook/outlook';
import { verdictFor } from '../../actions/verdicts/verdict-for';
import type { Piece } from '../../logbook/fold/pieces';
import { Icon, type IconName } from '../../parts/frame/icons';
import { useShop } from '../../parts/frame/shop-context';
import { MomentTime } from '../../parts/time/moment-time';
import { TimeBand } from '../../parts/time/time-band';
import { signOf } from '../../parts/verdict/sign';
import type { Act } from '../../verdicts/act';
import { type Moment, type MomentState, momentsOf } from '../../verdicts/moments';
import { bandSentence, MOMENT_STATE, MOMENT_WORDS, PERHAPS_HINT } from '../../words/piece/moments';
import { bandWords } from '../../words/times';
import { VERDICT_WORDS } from '../../words/verdicts/words';

interface MilestoneListProps {
  readonly piece: Piece;
  readonly outlook: Outlook | undefined;
}

const SIGNS: Record<MomentState, { readonly icon: IconName; readonly kind: string }> = {
  waiting: { icon: 'waiting', kind: 'quiet' },
  perhaps: { icon: 'clock', kind: 'wait' },
  reached: { icon: 'ready', kind: 'ready' },
  done: { icon: 'check', kind: 'quiet' },
};

/** From minutes to months on one line: equal steps are equal ratios of time since the last coat. */
const alongFrom = (lastCoatMs: number) => (atMs: number) =>
  Math.log10(Math.max(60, (atMs - lastCoatMs) / 1000));

/** The five moments of a piece, each with its band on one common line. */
export function MilestoneList({ piece, outlook }: MilestoneListProps) {
  const nowMs = useShop().nowMs.value;
  const moments = momentsOf(piece, outlook?.state === 'ready' ? outlook : undefined, nowMs);
  const along = alongFrom(piece.coats.at(-1)?.atMs ?? piece.startedMs);
  const ends = moments.flatMap(({ likelyMs, lateMs }) =>
    [likelyMs, lateMs].filter(Number.isFinite).map(along),
  );
  const axis = { along, from: along(0), to: Math.max(...ends, along(nowMs)) };
  return (
    <ol class="milestones">
      {moments.map((moment) => (
        <MilestoneLine key={moment.name} pieceId={piece.id} moment={moment} nowMs={nowMs} axis={axis} />
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
  readonly pieceId: string;
  readonly moment: Moment;
  readonly nowMs: number;
  readonly axis: Axis;
}

function MilestoneLine({ pieceId, moment, nowMs, axis: { along, from, to } }: MilestoneLineProps) {
  const { name, state, earliestMs, likelyMs, lateMs } = moment;
  const { likely, earliest, late } = bandWords(moment, nowMs);
  const { icon, kind, word } = useSign(pieceId, moment, nowMs);
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

const ACTS: { readonly [M in Moment['name']]?: Act } = {
  recoat: 'coat',
  level: 'level-sand',
  rubOut: 'rub-out',
};

/** What the judge says of the act that this moment allows; of the other moments, how far they have come. */
function useSign(pieceId: string, { name, state }: Moment, nowMs: number) {
  const act = ACTS[name];
  const verdict = verdictFor(useShop(), pieceId, { act: act ?? 'hand-over' });
  if (act === undefined || state === 'done' || !verdict)
    return { ...SIGNS[state], word: MOMENT_STATE[state] };
  return { ...signOf(verdict, nowMs), word: VERDICT_WORDS[verdict.word] };
}
