import type { Piece } from '../../logbook/fold/piece/pieces';
import { Icon } from '../../parts/blocks/icons';
import { Notice } from '../../parts/blocks/notice';
import { Section } from '../../parts/blocks/page';
import { BandTime } from '../../parts/time/band-time';
import { firstOpen } from '../../planner/compile';
import { toInstantMs } from '../../planner/local-day';
import type { Dominant, PlannedPiece } from '../../planner/plan';
import { absorbedWords } from '../../planner/say';
import { MINUTE_MS } from '../../units';
import { bandSentence } from '../../words/piece/moments';
import { PIECE_PLAN, PLAN_WORDS } from '../../words/plan/plan';
import { PROMISE_WORDS } from '../../words/plan/planner';
import { dayWords, spanWords } from '../../words/times';
import { BandLine } from './band-line';
import { readyBand } from './ready-band';
import { useNames, usePlan } from './use-plan';

const minutesWords = (minutes: number): string => spanWords(minutes * MINUTE_MS);

/** When a piece is ready, what most of the time goes on, and what a slip costs. */
export function Ready({ piece }: { readonly piece: Piece }) {
  const { bench, plan } = usePlan().planned.value;
  const found = plan.ok ? plan.value.pieces.find(({ pieceId }) => pieceId === piece.id) : undefined;
  const { steps = [], isAwaited = false } = bench.pieces.find(({ id }) => id === piece.id) ?? {};
  const isDone = firstOpen(steps) === steps.length;
  if (!found) return null;
  return (
    <Section title={PIECE_PLAN.ready}>
      {isDone ? (
        <p class="state" data-kind="ready">
          <Icon name="ready" />
          {PLAN_WORDS.finished}
        </p>
      ) : (
        <ToCome {...{ found, isAwaited }} now={bench.now} />
      )}
    </Section>
  );
}

interface ToComeProps {
  readonly found: PlannedPiece;
  readonly isAwaited: boolean;
  readonly now: number;
}

function ToCome({ found, isAwaited, now }: ToComeProps) {
  const nowMs = toInstantMs(now);
  const { earliest, likely, promise, dominant, missedWindows } = found;
  const band = readyBand(found, nowMs);
  return (
    <>
      <BandTime label={PLAN_WORDS.readyAbout} {...band} />
      <BandLine
        describe={bandSentence(PLAN_WORDS.readyAbout, band.likely, band.earliest, band.late)}
        from={now}
        to={promise + (promise - now) / 10}
        earliest={earliest}
        likely={likely}
        late={promise}
        now={now}
        fromLabel={PLAN_WORDS.now}
        toLabel={dayWords(toInstantMs(promise), nowMs)}
      />
      <p>{isAwaited ? PIECE_PLAN.awaited : promiseWords(found, nowMs)}</p>
      {found.promiseState !== 'none' && (
        <p class="state" data-kind={found.promiseState === 'kept' ? 'ready' : 'stop'}>
          <Icon name={found.promiseState === 'kept' ? 'check' : 'caution'} />
          {PROMISE_WORDS[found.promiseState]}
        </p>
      )}
      {dominant && <Costs dominant={dominant} />}
      {missedWindows.length > 0 && (
        <Notice kind="caution">
          <p>{PIECE_PLAN.missedWindow}</p>
        </Notice>
      )}
    </>
  );
}

function promiseWords({ isHeld, promise, reserveMinutes }: PlannedPiece, nowMs: number): string {
  const from = isHeld ? PIECE_PLAN.noPromise : PIECE_PLAN.promiseFrom(dayWords(toInstantMs(promise), nowMs));
  const reserve =
    reserveMinutes > 0 ? PIECE_PLAN.reserve(minutesWords(reserveMinutes)) : PIECE_PLAN.noReserve;
  return `${from} ${reserve}`;
}

function Costs({ dominant: { stepId, minutes, costOfADay, absorbedBy } }: { readonly dominant: Dominant }) {
  const names = useNames();
  return (
    <p class="quiet">
      {PIECE_PLAN.dominant(names.step(stepId).toLowerCase(), minutesWords(minutes))}{' '}
      {slipWords(costOfADay, absorbedBy)}
    </p>
  );
}

function slipWords(costOfADay: number | undefined, absorbedBy: Dominant['absorbedBy']): string {
  if (costOfADay === undefined) return PIECE_PLAN.slipWindow;
  return costOfADay <= 0
    ? PIECE_PLAN.slipNothing(absorbedWords(absorbedBy))
    : PIECE_PLAN.slip(minutesWords(costOfADay));
}
