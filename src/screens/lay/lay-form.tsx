import { type Signal, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Shop } from '../../logbook/fold/fold';
import { Send } from '../../parts/fields/form-fields';
import { TimeField } from '../../parts/fields/time-field';
import { type Form, useForm } from '../../parts/fields/use-form';
import { useTime } from '../../parts/fields/use-time';
import { readFromTitle, Section } from '../../parts/frame/page';
import { route } from '../../parts/frame/route';
import { useShop, useUnits } from '../../parts/frame/shop-context';
import { WhyAnyway } from '../../parts/verdict/why-anyway';
import { holdsOf } from '../../verdicts/verdict';
import { ROUND_WORDS } from '../../words/piece/acts';
import { LAY_WORDS } from '../../words/piece/lay';
import { type AirDraft, airFrom } from './air-draft';
import { AirFields } from './air-fields';
import { BeforeSpraying } from './before-spraying';
import { CardToo } from './card-too';
import { type CoatDraft, prefilled } from './coat-draft';
import { FilmFields } from './film-fields';
import { Judged } from './judged';
import { verdictsOnCoat } from './judged-coat';
import { PieceAndJar } from './piece-and-jar';
import { SameRound } from './same-round';
import { isSessionOpen } from './session';
import { Summary } from './summary';
import { useLay } from './use-lay';

/** One page: what will be logged, the button that logs it, and below it everything that may be different this time. */
export function LayForm() {
  const open = useShop();
  const { shop, nowMs } = open;
  const units = useUnits();
  const draft = useSignal(prefilled(shop.value, askedFor(), units));
  const air = useSignal(airFrom(shop.value.airReadings.at(-1), units));
  const form = useForm();
  const time = useTime();
  const reason = useSignal('');
  const judged = verdictsOnCoat(open, draft.value);
  const held = judged.find(({ verdict }) => verdict && holdsOf(verdict).length > 0)?.verdict;
  const lay = useLay({ draft, air, form, reason, judged }, time.instantMs);
  const jar = shop.value.jars.get(draft.value.jar ?? '');
  const asks = jar !== undefined && !isSessionOpen(shop.value, jar, draft.value.how, nowMs.value);
  useTurned(asks);
  if (jar && asks) return <BeforeSpraying jar={jar} how={draft.value.how} />;
  return (
    <form class="stack" onSubmit={lay} noValidate>
      <Section title={LAY_WORDS.summary}>
        <Summary draft={draft.value} air={air.value} when={time.field.shown} />
        <Judged judged={judged} />
        <WhyAnyway verdict={held} reason={reason} isTried={form.isTried.value} />
        <CardToo draft={draft} />
        <SameRound draft={draft} />
      </Section>
      <Section title={LAY_WORDS.change}>
        <Differences {...{ draft, air, form, time }} />
      </Section>
      <Send form={form} icon="coat">
        {sendWords(shop.value, draft.value)}
      </Send>
    </form>
  );
}

/** The button says what it will do. */
function sendWords({ pieces }: Shop, { piece: id = '', also }: CoatDraft): string {
  const piece = pieces.get(id);
  if (also.length > 0) return ROUND_WORDS.logAll(also.length + 1);
  return piece ? ROUND_WORDS.log(piece.coats.length + 1, piece.name) : LAY_WORDS.lay;
}

/** Cautions take the place of the form and the form that of the cautions: both are read from the top. */
function useTurned(asks: boolean): void {
  const asked = useRef(asks);
  useEffect(() => {
    if (asked.current !== asks) readFromTitle();
    asked.current = asks;
  }, [asks]);
}

const askedFor = () => {
  const { query } = route.value;
  const of = (name: string) => query.get(name);
  return {
    pieces: query.getAll('piece'),
    jar: of('jar'),
    zone: of('zone'),
    how: of('how'),
    dryUm: of('dry'),
    passes: of('passes'),
    wetUm: of('wet'),
  };
};

interface DifferencesProps {
  readonly draft: Signal<CoatDraft>;
  readonly air: Signal<AirDraft>;
  readonly form: Form;
  readonly time: ReturnType<typeof useTime>;
}

/** Everything that may be different from last time. */
function Differences({ draft, air, form, time }: DifferencesProps) {
  const isTried = form.isTried.value;
  const fields = form.refused.value?.fields ?? {};
  const change = (more: Partial<CoatDraft>): void => {
    draft.value = { ...draft.value, ...more };
  };
  const changeAir = (more: Partial<AirDraft>): void => {
    air.value = { ...air.value, ...more };
  };
  return (
    <>
      <PieceAndJar draft={draft.value} onChange={change} />
      <FilmFields draft={draft.value} onChange={change} isTried={isTried} fields={fields} />
      <TimeField label={LAY_WORDS.when} {...time.field} problem={fields['at']} />
      <AirFields air={air.value} onChange={changeAir} isTried={isTried} />
    </>
  );
}
