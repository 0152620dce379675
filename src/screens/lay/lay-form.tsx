import { type Signal, signal, useSignal } from '@preact/signals';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Shop } from '../../logbook/fold/fold';
import { zonesOf } from '../../logbook/fold/piece/zones';
import { readFromTitle, Section } from '../../parts/blocks/page';
import { Send } from '../../parts/fields/form/form-fields';
import { type Form, useForm } from '../../parts/fields/form/use-form';
import { Line } from '../../parts/fields/line';
import { TimeField } from '../../parts/fields/time/time-field';
import { useTime } from '../../parts/fields/time/use-time';
import { route } from '../../parts/frame/route';
import { useShop, useUnits } from '../../parts/frame/shop-context';
import { WhyAnyway } from '../../parts/verdict/why-anyway';
import { holdsOf } from '../../verdicts/verdict';
import { ROUND_WORDS } from '../../words/piece/acts';
import { LAY_WORDS } from '../../words/piece/coat/lay';
import { BeforeSpraying } from './before-spraying';
import { type CoatDraft, prefilled, standOfCoat } from './coat-draft';
import { type AirDraft, airFrom } from './fields/air-draft';
import { AirFields } from './fields/air-fields';
import { CardToo } from './fields/card-too';
import { FilmFields } from './fields/film-fields';
import { PadOil } from './fields/pad-oil';
import { JarFields, PieceFields } from './fields/piece-and-jar';
import { Judged } from './judged';
import { verdictsOnCoat } from './judged-coat';
import { AlsoOn, SameRound } from './same-round';
import { isSessionOpen } from './session';
import { coatLine, Summary, useAirLine } from './summary';
import { useLay } from './use-lay';

/** One page: what will be logged, the button that logs it, and below it everything that may be different this time. */
export function LayForm() {
  const open = useShop();
  const { shop, nowMs } = open;
  const units = useUnits();
  const draft = useOnce(() => prefilled(shop.peek(), askedFor(), units));
  const air = useOnce(() => airFrom(shop.peek().airReadings.at(-1), units));
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
        <Summary draft={draft.value} />
        <Lines {...{ draft, air, form, time }} />
        <Judged judged={judged} />
        <WhyAnyway verdict={held} reason={reason} isTried={form.isTried.value} />
        <CardToo draft={draft} />
      </Section>
      <Send form={form} icon="coat">
        {sendWords(shop.value, draft.value)}
      </Send>
    </form>
  );
}

/** The button says what it will do. */
function sendWords(shop: Shop, draft: CoatDraft): string {
  const piece = standOfCoat(draft, shop);
  if (draft.also.length > 0) return ROUND_WORDS.logAll(draft.also.length + 1);
  return piece ? ROUND_WORDS.log(piece.coats.length + 1, piece.name) : LAY_WORDS.lay;
}

/** What stands in the form as the page is come to; it is not looked up again for each drawing of it. */
const useOnce = <Value,>(first: () => Value): Signal<Value> => useState(() => signal(first()))[0];

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

interface LinesProps {
  readonly draft: Signal<CoatDraft>;
  readonly air: Signal<AirDraft>;
  readonly form: Form;
  readonly time: ReturnType<typeof useTime>;
}

/** What is said already, a line each; a tap opens what may be different from last time. */
function Lines({ draft, air, form, time }: LinesProps) {
  const { pieces, jars } = useShop().shop.value;
  const units = useUnits();
  const airLine = useAirLine(air.value);
  const isTried = form.isTried.value;
  const fields = form.refused.value?.fields ?? {};
  const change = (more: Partial<CoatDraft>): void => {
    draft.value = { ...draft.value, ...more };
  };
  const { piece, zone, jar } = draft.value;
  const place = usePlaceName(piece, zone);
  const name = pieces.get(piece ?? '')?.name;
  return (
    <>
      <SameRound draft={draft} />
      <div class="folds">
        <Line label={LAY_WORDS.piece} says={place ? `${name}, ${place}` : name}>
          <PieceFields draft={draft.value} onChange={change} />
        </Line>
        <AlsoOn draft={draft} />
        <Line label={LAY_WORDS.from} says={jars.get(jar ?? '')?.name}>
          <JarFields draft={draft.value} onChange={change} />
        </Line>
        <Line label={LAY_WORDS.how} says={coatLine(draft.value, units)}>
          <FilmFields draft={draft.value} onChange={change} isTried={isTried} fields={fields} />
        </Line>
        <Line label={LAY_WORDS.whenLine} says={time.field.shown}>
          <TimeField label={LAY_WORDS.when} {...time.field} problem={fields['at']} />
        </Line>
        <Line label={LAY_WORDS.airLine} says={airLine}>
          <AirFields
            air={air.value}
            onChange={(more) => {
              air.value = { ...air.value, ...more };
            }}
            isTried={isTried}
          />
        </Line>
      </div>
      <PadOil draft={draft.value} onChange={change} />
    </>
  );
}

function usePlaceName(piece: string | undefined, zone: string | undefined): string | undefined {
  const { shop } = useShop();
  return zonesOf(piece ?? '', shop.value).find(({ zoneId }) => zoneId === zone)?.name;
}
