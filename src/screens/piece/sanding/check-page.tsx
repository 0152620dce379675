import { useSignal } from '@preact/signals';
import { finishTraits } from '../../../estimator/finishes/traits';
import type { Check } from '../../../logbook/fold/piece/pieces';
import { CHECK_RESULTS, CHECK_TESTS } from '../../../logbook/kinds/piece/check';
import { Page, Section } from '../../../parts/blocks/page';
import { Choice } from '../../../parts/fields/choice';
import { OneOf, Send } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import { TimeField } from '../../../parts/fields/time/time-field';
import { useTime } from '../../../parts/fields/time/use-time';
import { fromHere } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import { CHECK_FORM, EVENT_WORDS } from '../../../words/piece/piece';
import { usePiece } from '../use-piece';

const TESTS = CHECK_TESTS.map((value) => ({ value, ...CHECK_FORM.tests[value] }));
const findings = (test: Check['test']) =>
  CHECK_RESULTS.map((value) => ({ value, label: EVENT_WORDS.checks[test][value] }));

/** Marks what the film did when it was tried. */
export function CheckPage() {
  const { piece, zone, home } = usePiece();
  const { form, time, test, found, log } = useCheck();
  const { jars } = useShop().shop.value;
  const finish = jars.get(piece.coats.at(-1)?.jar ?? '')?.product.finish;
  const blushes = finish === undefined || finishTraits(finish).blushes;
  return (
    <Page title={CHECK_FORM.title} backTo={home}>
      <Section title={zone?.name ?? piece.name}>
        <p class="quiet">{CHECK_FORM.text}</p>
        <form class="stack wide-tiles" onSubmit={log} noValidate>
          <Choice
            label={CHECK_FORM.test}
            options={TESTS.filter(({ value }) => blushes || value !== 'blush')}
            value={test.value}
            onChange={(value) => {
              test.value = value;
              found.value = undefined; // what was found belongs to its test
            }}
          />
          <OneOf
            label={CHECK_FORM.result}
            of={found}
            options={findings(test.value)}
            problem={form.isTried.value && found.value === undefined ? CHECK_FORM.choose : undefined}
          />
          <TimeField label={CHECK_FORM.when} {...time.field} problem={form.refused.value?.fields['at']} />
          <Send form={form} icon="check">
            {CHECK_FORM.log}
          </Send>
        </form>
      </Section>
    </Page>
  );
}

function useCheck() {
  const { actions } = useShop();
  const { piece, place, home } = usePiece();
  const form = useForm();
  const time = useTime();
  const test = useSignal<Check['test']>('print');
  const found = useSignal<Check['result'] | undefined>(undefined);

  async function log(event: Event): Promise<void> {
    const goOn = fromHere();
    event.preventDefault();
    const said = { piece: piece.id, test: test.value, result: found.value ?? 'passes', ...place } as const;
    const isWhole = found.value !== undefined;
    const logged = await form.send(isWhole, () => actions.logCheck(said, time.instantMs() ?? Number.NaN));
    if (!logged) return;
    const what = EVENT_WORDS.checks[said.test][said.result];
    sayLogged(actions, logged.id, what, CHECK_FORM.logged(what));
    goOn(home);
  }

  return { form, time, test, found, log: (event: Event) => void log(event) };
}
