import { useSignal } from '@preact/signals';
import { CHECK_RESULTS, CHECK_TESTS } from '../../logbook/kinds/check';
import { Button } from '../../parts/button';
import { Choice } from '../../parts/choice';
import { Page, Section } from '../../parts/page';
import { Refusal } from '../../parts/refusal';
import { goTo, linkTo } from '../../parts/route';
import { useShop } from '../../parts/shop-context';
import { TimeField } from '../../parts/time-field';
import { showToast } from '../../parts/toast';
import { undoWithToast } from '../../parts/undo';
import { useForm } from '../../parts/use-form';
import { useTime } from '../../parts/use-time';
import { CHECK_FORM, EVENT_WORDS } from '../../words/piece';
import { usePiece } from './use-piece';

type Test = (typeof CHECK_TESTS)[number];
type Found = (typeof CHECK_RESULTS)[number];

const TEST_OPTIONS = CHECK_TESTS.map((value) => ({ value, ...CHECK_FORM.tests[value] }));
const foundOptions = (test: Test) =>
  CHECK_RESULTS.map((value) => ({ value, label: EVENT_WORDS.checks[test][value] }));

/** Marks what the film did when it was tried. */
export function CheckPage() {
  const { actions } = useShop();
  const { piece } = usePiece();
  const form = useForm();
  const time = useTime();
  const test = useSignal<Test>('print');
  const found = useSignal<Found | undefined>(undefined);
  const fields = form.refused.value?.fields ?? {};

  async function log(event: Event): Promise<void> {
    event.preventDefault();
    const result = found.value ?? 'passes';
    const said = { piece: piece.id, test: test.value, result };
    const isWhole = found.value !== undefined;
    const logged = await form.send(isWhole, () => actions.logCheck(said, time.instantMs() ?? Number.NaN));
    if (!logged) return;
    const what = EVENT_WORDS.checks[said.test][said.result];
    showToast({
      text: CHECK_FORM.logged(what),
      onUndo: () => void undoWithToast(actions, logged.id, what),
    });
    goTo('piece', piece.id);
  }

  return (
    <Page title={CHECK_FORM.title} backTo={linkTo('piece', piece.id)}>
      <Section title={piece.name}>
        <p class="quiet">{CHECK_FORM.text}</p>
        <form class="stack wide-tiles" onSubmit={(event) => void log(event)} noValidate>
          <Choice
            label={CHECK_FORM.test}
            options={TEST_OPTIONS}
            value={test.value}
            onChange={(value) => {
              test.value = value;
              found.value = undefined;
            }}
          />
          <Choice
            label={CHECK_FORM.result}
            options={foundOptions(test.value)}
            value={found.value}
            onChange={(value) => {
              found.value = value;
            }}
            problem={form.isTried.value && found.value === undefined ? CHECK_FORM.choose : undefined}
          />
          <TimeField label={CHECK_FORM.when} {...time.field} problem={fields['at']} />
          <Refusal refused={form.refused.value} />
          <div class="acts">
            <Button kind="main" icon="check" isSubmit isWide disabled={form.isBusy.value}>
              {CHECK_FORM.log}
            </Button>
          </div>
        </form>
      </Section>
    </Page>
  );
}
