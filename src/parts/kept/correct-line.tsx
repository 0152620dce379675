import { signal, useSignal } from '@preact/signals';
import { useState } from 'preact/hooks';
import { correct } from '../../actions/correct';
import type { Entry, EntryOf } from '../../logbook/entry';
import { LIMITS, type Limit } from '../../logbook/limits';
import { CORRECT_WORDS as WORDS } from '../../words/piece/correct';
import { CorrectedTime, timeChange } from '../fields/corrected-time';
import { Quantity, Send } from '../fields/form-fields';
import { clockText, instantOf, type TimeChoice } from '../fields/time-choice';
import { type Draft, draftProblem } from '../fields/typed-field';
import { useForm } from '../fields/use-form';
import { Page } from '../frame/page';
import { fromHere, linkTo } from '../frame/route';
import { useShop } from '../frame/shop-context';
import { sayLogged } from '../frame/undo';

type To = EntryOf<'corrected'>['to'];
type Line = EntryOf<'air-read' | 'jar-weighed' | 'poured'>;
type Field = 'temperature' | 'humidity' | 'mass' | 'scale';

const LIMIT_OF = {
  temperature: LIMITS.temperature,
  humidity: LIMITS.humidity,
  mass: LIMITS.mass,
  scale: LIMITS.mass,
} as const satisfies Readonly<Record<Field, Limit>>;

/** What of each line can be corrected; a humidity worked out from another thermometer was never read off. */
const fieldsOf = (line: Line): readonly Field[] => {
  if (line.kind === 'jar-weighed') return ['mass'];
  if (line.kind === 'poured') return ['scale'];
  return line.humidityFrom ? [] : ['temperature', 'humidity'];
};

/** What was read off, each in a draft of its own. */
function draftsOf(line: Line) {
  const said = line as Partial<Record<Field, Draft>>;
  return fieldsOf(line).map((field) => {
    const was = said[field] ?? { text: '', unit: 'g' };
    const limit: Limit = LIMIT_OF[field];
    return { field, limit, was, of: signal<Draft>(was) };
  });
}

const backOf = (line: Line): string => {
  if (line.kind === 'jar-weighed') return linkTo('mix', 'jar', line.jar);
  if (line.kind === 'poured') return linkTo('mix', 'weigh', line.weighUp);
  return linkTo('air', 'readings');
};

const isLine = (entry: Entry | undefined): entry is Line =>
  entry?.kind === 'air-read' || entry?.kind === 'jar-weighed' || entry?.kind === 'poured';

/** Corrects a reading of the air, a weighing of a jar or a pour: when it was, and what was read off. */
export function CorrectLine({ id }: { readonly id: string }) {
  const { shop } = useShop();
  const entry = shop.value.corrected.get(id)?.entry ?? shop.value.entries.get(id);
  const line = isLine(entry) ? entry : undefined;
  return (
    <Page title={line ? WORDS.lines[line.kind] : WORDS.title} backTo={line ? backOf(line) : linkTo('bench')}>
      {line ? <Form key={id} line={line} /> : <p>{WORDS.lineGone}</p>}
    </Page>
  );
}

function Form({ line }: { readonly line: Line }) {
  const { needs, actions, nowMs } = useShop();
  const form = useForm();
  const atMs = Date.parse(line.at);
  const time = useSignal<TimeChoice>({ kind: 'clock', text: clockText(atMs) });
  const [fields] = useState(() => draftsOf(line));
  const shownMs = instantOf(time.value, nowMs.value);
  const isWhole = fields.every(({ of, limit }) => draftProblem(of.value, limit) === undefined);

  /** What differs from what was said; a time that was not touched keeps its seconds. */
  const changes = (): To => {
    const others = fields
      .filter(({ was, of }) => of.value.text !== was.text || of.value.unit !== was.unit)
      .map(({ field, of }) => [field, of.value]);
    return { ...timeChange(time.value, atMs, needs.now()), ...Object.fromEntries(others) };
  };

  async function send(event: Event): Promise<void> {
    event.preventDefault();
    const goOn = fromHere();
    const done = await form.send(isWhole && shownMs !== undefined, () => correct(needs, line.id, changes()));
    if (!done) return;
    const what = WORDS.lines[line.kind];
    sayLogged(actions, done.id, what, WORDS.lineDone);
    goOn(backOf(line));
  }

  return (
    <form class="stack" onSubmit={(event) => void send(event)} noValidate>
      <CorrectedTime of={time} form={form} nowMs={nowMs.value} />
      {fields.map(({ field, limit, of }) => (
        <Quantity
          key={field}
          label={WORDS.fields[field]}
          limit={limit}
          of={of}
          form={form}
          at={`to.${field}`}
        />
      ))}
      <p class="quiet small">{WORDS.text}</p>
      <Send form={form} icon="edit">
        {WORDS.save}
      </Send>
    </form>
  );
}
