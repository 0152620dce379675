import { useSignal } from '@preact/signals';
import { Button } from '../../parts/button';
import { Section } from '../../parts/page';
import { Refusal } from '../../parts/refusal';
import { route } from '../../parts/route';
import { useShop, useUnits } from '../../parts/shop-context';
import { TimeField } from '../../parts/time-field';
import { useForm } from '../../parts/use-form';
import { useTime } from '../../parts/use-time';
import { LAY_WORDS } from '../../words/lay';
import { airFrom } from './air-draft';
import { AirFields } from './air-fields';
import { BeforeSpraying } from './before-spraying';
import { type CoatDraft, prefilled } from './coat-draft';
import { FilmFields } from './film-fields';
import { PieceAndJar } from './piece-and-jar';
import { isSessionOpen } from './session';
import { Summary } from './summary';
import { TooSoon } from './too-soon';
import { useLay } from './use-lay';

/** One page: what will be logged, the button that logs it, and below it everything that may be different this time. */
export function LayForm() {
  const { shop, nowMs } = useShop();
  const units = useUnits();
  const draft = useSignal(prefilled(shop.value, askedFor(), units));
  const air = useSignal(airFrom(shop.value.airReadings.at(-1), units));
  const form = useForm();
  const time = useTime();
  const lay = useLay(draft, air, form, time.instantMs);
  const fields = form.refused.value?.fields ?? {};
  const change = (more: Partial<CoatDraft>): void => {
    draft.value = { ...draft.value, ...more };
  };

  const jar = shop.value.jars.get(draft.value.jar ?? '');
  if (jar && !isSessionOpen(shop.value, jar, draft.value.how, nowMs.value))
    return <BeforeSpraying jar={jar} how={draft.value.how} />;

  return (
    <form class="stack" onSubmit={lay} noValidate>
      <Section title={LAY_WORDS.summary}>
        <Summary draft={draft.value} air={air.value} when={time.field.shown} />
        <TooSoon piece={draft.value.piece} />
        <Refusal refused={form.refused.value} />
        <Button kind="main" icon="coat" isSubmit isWide disabled={form.isBusy.value}>
          {LAY_WORDS.lay}
        </Button>
      </Section>
      <Section title={LAY_WORDS.change}>
        <PieceAndJar draft={draft.value} onChange={change} />
        <FilmFields draft={draft.value} onChange={change} isTried={form.isTried.value} fields={fields} />
        <TimeField label={LAY_WORDS.when} {...time.field} problem={fields['at']} />
        <AirFields
          air={air.value}
          onChange={(more) => {
            air.value = { ...air.value, ...more };
          }}
          isTried={form.isTried.value}
        />
        <div class="acts">
          <Button kind="main" icon="coat" isSubmit isWide disabled={form.isBusy.value}>
            {LAY_WORDS.lay}
          </Button>
        </div>
      </Section>
    </form>
  );
}

const askedFor = () => {
  const { query } = route.value;
  return { piece: query.get('piece'), jar: query.get('jar') };
};
