import { HeadRow } from '../../../parts/blocks/head-row';
import { toInstantMs } from '../../../planner/local-day';
import type { PlannedStep } from '../../../planner/plan';
import { stepName } from '../../../planner/say';
import { PLAN_WORDS } from '../../../words/plan/plan';
import { dateWords } from '../../../words/times';
import { VERDICT_WORDS } from '../../../words/verdicts/words';
import { startWords } from '../planned-time';
import type { TimelineProps } from './timeline';

/** The same in words and numbers: for a screen reader, and on paper. */
export function TimelineTable({ plan, bench, pieces, nameOf }: TimelineProps) {
  const nowMs = toInstantMs(plan.now);
  const day = (minute: number): string => dateWords(toInstantMs(minute), nowMs);
  return (
    <details class="chart-table timeline-table">
      <summary>{PLAN_WORDS.asTable}</summary>
      <table class="digits">
        <caption class="heard">{PLAN_WORDS.timeline}</caption>
        <HeadRow heads={PLAN_WORDS.columns} />
        <tbody>
          {pieces.map(({ pieceId, earliest, likely, promise, isHeld }) => {
            const promised = bench.pieces.find(({ id }) => id === pieceId)?.promised;
            const next = plan.steps.find(
              (step) => step.pieceId === pieceId && !step.isDone && isHandwork(step),
            );
            return (
              <tr key={pieceId}>
                <th scope="row">{nameOf(pieceId)}</th>
                <td>{day(earliest)}</td>
                <td>{day(likely)}</td>
                <td>{isHeld ? VERDICT_WORDS.hold : day(promise)}</td>
                <td>{promised === undefined ? '–' : day(promised)}</td>
                <td>{next ? `${stepName(next.step)}, ${startWords(next, plan.steps, nowMs)}` : '–'}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </details>
  );
}

const isHandwork = ({ kind }: PlannedStep): boolean => kind === 'work' || kind === 'gate';
