import { signal } from '@preact/signals';
import { useState } from 'preact/hooks';
import type { Entry, EntryOf } from '../../logbook/entry';
import { LIMITS, type Limit } from '../../logbook/limits';
import { CORRECT_WORDS as WORDS } from '../../words/piece/coat/correct';
import { Page } from '../blocks/page';
import { Quantity } from '../fields/form/form-fields';
import { type Draft, draftProblem } from '../fields/typed-field';
import { linkTo } from '../frame/route';
import { useShop } from '../frame/shop-context';
import { CorrectionForm, type To } from './correction-form';

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
      {line ? <LineForm key={id} line={line} /> : <p>{WORDS.lineGone}</p>}
    </Page>
  );
}

function LineForm({ line }: { readonly line: Line }) {
  const [fields] = useState(() => draftsOf(line));
  const isWhole = fields.every(({ of, limit }) => draftProblem(of.value, limit) === undefined);

  const changes = (): To =>
    Object.fromEntries(
      fields
        .filter(({ was, of }) => of.value.text !== was.text || of.value.unit !== was.unit)
        .map(({ field, of }) => [field, of.value]),
    );
  return (
    <CorrectionForm
      entry={line}
      isWhole={isWhole}
      changes={changes}
      what={WORDS.lines[line.kind]}
      done={WORDS.lineDone}
      backTo={backOf(line)}
    >
      {(form) =>
        fields.map(({ field, limit, of }) => (
          <Quantity
            key={field}
            label={WORDS.fields[field]}
            limit={limit}
            of={of}
            form={form}
            at={`to.${field}`}
          />
        ))
      }
    </CorrectionForm>
  );
}
