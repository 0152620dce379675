import { useSignal } from '@preact/signals';
import { liftClosure } from '../../../actions/plan/lift-closure';
import { setClosure } from '../../../actions/plan/set-closure';
import { CLOSURES } from '../../../logbook/kinds/shop/plan';
import { Button } from '../../../parts/blocks/button';
import { Choice } from '../../../parts/fields/choice';
import { leadToProblem } from '../../../parts/fields/form/use-form';
import { DateField } from '../../../parts/fields/time/date-field';
import { widestSpan } from '../../../parts/fields/time/time-choice';
import { sayOutcome, sayRefused } from '../../../parts/frame/say-refused';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { undoWithToast } from '../../../parts/frame/undo';
import { HOURS_WORDS } from '../../../words/plan/plan';
import { whenWords } from '../../../words/times';

type Closes = (typeof CLOSURES)[number];
const KINDS = CLOSURES.map((value) => ({ value, label: HOURS_WORDS.closes[value] }));

/** Times when the shop is closed, each to be taken back. */
export function Closures() {
  const { shop, needs, nowMs, actions } = useShop();
  const toCome = shop.value.closures.filter(({ span }) => Date.parse(span.to) > nowMs.value);
  const write = (instant: string): string => whenWords(Date.parse(instant), nowMs.value);

  async function lift(closure: string): Promise<void> {
    const lifted = await liftClosure(needs, { closure });
    sayOutcome(lifted, ({ id }) => ({
      text: HOURS_WORDS.lifted,
      onUndo: () => void undoWithToast(actions, id, HOURS_WORDS.lift),
    }));
  }
  return (
    <>
      {toCome.length === 0 && <p class="quiet">{HOURS_WORDS.noClosures}</p>}
      <ul class="stack">
        {toCome.map(({ closure, span, closes }) => (
          <li key={closure} class="closure">
            <p>
              <strong>{HOURS_WORDS.closes[closes]}</strong>{' '}
              <span class="digits">{HOURS_WORDS.span(write(span.from), write(span.to))}</span>
            </p>
            <Button icon="undo" onClick={() => void lift(closure)}>
              {HOURS_WORDS.lift}
            </Button>
          </li>
        ))}
      </ul>
      <ClosureForm />
    </>
  );
}

function ClosureForm() {
  const { needs, actions } = useShop();
  const from = useSignal('');
  const to = useSignal('');
  const closes = useSignal<Closes>('everything');
  const problem = useSignal<string | undefined>(undefined);

  async function add(event: Event): Promise<void> {
    event.preventDefault();
    const { fromMs, toMs } = widestSpan(from.value, to.value);
    problem.value = problemOf(fromMs, toMs);
    if (problem.value !== undefined) return leadToProblem();
    const span = { from: new Date(fromMs).toISOString(), to: new Date(toMs).toISOString() };
    const kept = await setClosure(needs, { closure: needs.newId(), span, closes: closes.value });
    if (!kept.ok) return sayRefused(kept.failure);
    from.value = '';
    to.value = '';
    showToast({
      text: HOURS_WORDS.added,
      onUndo: () => void undoWithToast(actions, kept.value.id, HOURS_WORDS.closures),
    });
  }
  return (
    <details class="folded">
      <summary>{HOURS_WORDS.addClosure}</summary>
      <form class="stack" onSubmit={(event) => void add(event)} noValidate>
        <Choice
          label={HOURS_WORDS.what}
          options={KINDS}
          value={closes.value}
          onChange={(value) => {
            closes.value = value;
          }}
        />
        <DateField
          kind="datetime-local"
          label={HOURS_WORDS.begins}
          day={from.value}
          onDay={(value) => {
            from.value = value;
          }}
          problem={from.value === '' ? problem.value : undefined}
        />
        <DateField
          kind="datetime-local"
          label={HOURS_WORDS.ends}
          day={to.value}
          onDay={(value) => {
            to.value = value;
          }}
          problem={from.value === '' ? undefined : problem.value}
        />
        <div class="acts">
          <Button icon="add" isSubmit>
            {HOURS_WORDS.add}
          </Button>
        </div>
      </form>
    </details>
  );
}

function problemOf(fromMs: number, toMs: number): string | undefined {
  if (Number.isNaN(fromMs) || Number.isNaN(toMs)) return HOURS_WORDS.closureMissing;
  return toMs > fromMs ? undefined : HOURS_WORDS.endsFirst;
}
