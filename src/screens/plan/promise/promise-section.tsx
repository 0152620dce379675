import { useSignal } from '@preact/signals';
import { promisePiece } from '../../../actions/plan/promise-piece';
import { verdictFor } from '../../../actions/verdicts/verdict-for';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { Button, LinkButton } from '../../../parts/blocks/button';
import { Fold } from '../../../parts/blocks/fold';
import { leadToProblem } from '../../../parts/fields/form/use-form';
import { Line } from '../../../parts/fields/line';
import { DateField } from '../../../parts/fields/time/date-field';
import { clockText } from '../../../parts/fields/time/time-choice';
import { linkTo } from '../../../parts/frame/route';
import { sayRefused } from '../../../parts/frame/say-refused';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { undoWithToast } from '../../../parts/frame/undo';
import { Reasons } from '../../../parts/verdict/reasons';
import { SetAside } from '../../../parts/verdict/why-anyway';
import { toInstantMs, toMinute } from '../../../planner/local-day';
import type { PlannedPiece } from '../../../planner/plan';
import { checkPromise } from '../../../planner/promise';
import { faultSentence } from '../../../planner/say';
import { PIECE_PLAN } from '../../../words/plan/plan';
import { dayWords } from '../../../words/times';
import { usePlan } from '../use-plan';

/** A promise is for the end of the working day (judgement, no source). */
const END_OF_DAY = 'T17:00';

/** What the owner was told, and whether it holds. */
export function PromiseSection({ piece }: { readonly piece: Piece }) {
  const { shop, nowMs } = useShop();
  const { plan } = usePlan().planned.value;
  const found = plan.ok ? plan.value.pieces.find(({ pieceId }) => pieceId === piece.id) : undefined;
  const promisedMs = shop.value.promises.get(piece.id);
  const told = promisedMs === undefined ? undefined : dayWords(promisedMs, nowMs.value);
  const chosen = useSignal<string | undefined>(undefined);
  const day = chosen.value ?? (found && clockText(promisedMs ?? toInstantMs(found.promise)).slice(0, 10));
  const form = found && day !== undefined && (
    <PromiseForm
      {...{ piece, found, promisedMs, day }}
      onDay={(value) => {
        chosen.value = value;
      }}
    />
  );
  return (
    <Fold title={PIECE_PLAN.promise} brief={told} isOpen={found?.isHeld}>
      {told !== undefined && <p>{PIECE_PLAN.promised(told)}</p>}
      <Held piece={piece} day={day} />
      {found &&
        (told === undefined ? (
          form
        ) : (
          <Line label={PIECE_PLAN.promiseDay} says={told}>
            {form}
          </Line>
        ))}
      <div class="acts">
        <LinkButton icon="share" href={linkTo('plan', piece.id, 'owner')}>
          {PIECE_PLAN.draft}
        </LinkButton>
      </div>
    </Fold>
  );
}

interface PromiseFormProps {
  readonly piece: Piece;
  readonly found: PlannedPiece;
  readonly promisedMs: number | undefined;
  readonly day: string;
  readonly onDay: (day: string) => void;
}

const endOf = (day: string): number => Date.parse(`${day}${END_OF_DAY}`);

function PromiseForm({ piece, found, promisedMs, day, onDay }: PromiseFormProps) {
  const { needs, actions, nowMs } = useShop();
  const problem = useSignal<string | undefined>(undefined);

  async function keep(event: Event): Promise<void> {
    event.preventDefault();
    const atMs = endOf(day);
    problem.value = problemOf(atMs, nowMs.value, found);
    if (problem.value !== undefined) return leadToProblem();
    await say({ piece: piece.id, promised: new Date(atMs).toISOString() }, PIECE_PLAN.promiseKept);
  }
  async function say(said: Parameters<typeof promisePiece>[1], text: string): Promise<void> {
    const kept = await promisePiece(needs, said);
    if (!kept.ok) return sayRefused(kept.failure);
    showToast({ text, onUndo: () => void undoWithToast(actions, kept.value.id, PIECE_PLAN.promise) });
  }

  return (
    <form class="stack" onSubmit={(event) => void keep(event)} noValidate>
      {!found.isHeld && (
        <DateField
          label={PIECE_PLAN.promiseDay}
          {...{ day, onDay }}
          hint={PIECE_PLAN.promiseHint(dayWords(toInstantMs(found.promise), nowMs.value))}
          problem={problem.value}
        />
      )}
      <div class="acts">
        {!found.isHeld && (
          <Button icon="check" isSubmit>
            {PIECE_PLAN.keepPromise}
          </Button>
        )}
        {promisedMs !== undefined && (
          <Button icon="undo" onClick={() => void say({ piece: piece.id }, PIECE_PLAN.takenBack)}>
            {PIECE_PLAN.takeBack}
          </Button>
        )}
      </div>
    </form>
  );
}

function problemOf(atMs: number, nowMs: number, { earliest }: PlannedPiece): string | undefined {
  if (Number.isNaN(atMs)) return PIECE_PLAN.promiseDayMissing;
  const checked = checkPromise(toMinute(atMs), toMinute(nowMs), earliest);
  return checked.ok ? undefined : faultSentence(checked.failure);
}

/** What speaks against a promise for this day, or was set aside, each with the way to where it is cleared. */
function Held({ piece, day }: { readonly piece: Piece; readonly day: string | undefined }) {
  const open = useShop();
  const forMs = day ? endOf(day) : undefined;
  const about = { pieceId: piece.id, verdict: verdictFor(open, piece.id, { act: 'promise', forMs }) };
  return (
    <>
      <Reasons {...about} />
      <SetAside {...about} />
    </>
  );
}
