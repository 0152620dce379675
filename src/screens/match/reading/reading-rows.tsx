import { Button } from '../../../parts/blocks/button';
import { NumberField } from '../../../parts/fields/number-field';
import { TextField } from '../../../parts/fields/text-field';
import { impossiblePart } from '../../../science/colour/lab';
import { meanReading } from '../../../science/colour/readings/readings';
import { hexToLab } from '../../../shop/colour/screen-colour';
import { LOGBOOK_WORDS } from '../../../words/frame/logbook';
import { READ_PROBLEMS, READ_WORDS as WORDS } from '../../../words/match/read';
import { differenceText, labText } from '../colour-text';
import { BLANK_ROW, partProblem, type ReadAs, type RowDraft, rowLab } from './read-draft';
import type { ReadDrafts } from './use-read-drafts';

interface RowsProps {
  readonly drafts: ReadDrafts;
  readonly isTried: boolean;
}

const PARTS = { lab: ['L', 'a', 'b'], xyz: ['X', 'Y', 'Z'] } as const;
/** Readings further apart than this were not of the same place. Judgement. */
const WIDE_E00 = 1;

/** The readings being typed, one under another, with their mean. */
export function ReadingRows({ drafts, isTried }: RowsProps) {
  const { rows, how } = drafts;
  const change = (at: number, some: Partial<RowDraft>): void => {
    rows.value = rows.value.map((row, i) => (i === at ? { ...row, ...some } : row));
  };
  return (
    <div class="stack">
      {rows.value.map((row, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a reading has no name but its place
        <fieldset key={i} class="reading">
          <legend>{WORDS.reading(i + 1)}</legend>
          <RowFields
            how={how.value}
            row={row}
            onChange={(some) => change(i, some)}
            isTried={isTried && i === 0}
          />
          {rows.value.length > 1 && (
            <button
              type="button"
              class="reading-remove"
              aria-label={WORDS.removeThis(i + 1)}
              onClick={() => {
                rows.value = rows.value.toSpliced(i, 1);
              }}
            >
              {WORDS.remove}
            </button>
          )}
        </fieldset>
      ))}
      <div class="acts">
        <Button
          icon="add"
          addsRow
          onClick={() => {
            rows.value = [...rows.value, BLANK_ROW];
          }}
        >
          {WORDS.another}
        </Button>
      </div>
      <MeanLine drafts={drafts} />
    </div>
  );
}

interface RowProps {
  readonly how: ReadAs;
  readonly row: RowDraft;
  readonly onChange: (some: Partial<RowDraft>) => void;
  readonly isTried: boolean;
}

function RowFields({ how, row, onChange, isTried }: RowProps) {
  if (how === 'hex')
    return (
      <TextField
        label={WORDS.hex}
        hint={WORDS.hexHint}
        text={row.hex}
        onText={(hex) => onChange({ hex })}
        problem={(isTried || row.hex.length > 6) && !hexToLab(row.hex) ? LOGBOOK_WORDS.notAHex : undefined}
      />
    );
  if (how === 'file') return null;
  return (
    <div class="triple">
      {PARTS[how].map((part, i) => {
        const at = i as 0 | 1 | 2;
        const problem = isTried || row.parts[at] !== '' ? partProblem(how, row, at) : undefined;
        return (
          <NumberField
            key={part}
            label={WORDS.parts[part]}
            isSigned={part === 'a' || part === 'b'}
            text={row.parts[at]}
            onText={(text) => onChange({ parts: withPart(row.parts, at, text) })}
            // A sign alone is a number being begun.
            problem={/^[+\-−]$/.test(row.parts[at]) && !isTried ? undefined : problem}
          />
        );
      })}
    </div>
  );
}

const withPart = (parts: RowDraft['parts'], at: 0 | 1 | 2, text: string): RowDraft['parts'] =>
  parts.map((part, i) => (i === at ? text : part)) as unknown as RowDraft['parts'];

/** The mean of what is whole so far, and how far it scatters. */
function MeanLine({ drafts: { rows, how, white } }: { readonly drafts: ReadDrafts }) {
  const labs = rows.value.flatMap((row) => rowLab(how.value, row, white.value) ?? []);
  if (labs.some((lab) => impossiblePart(lab))) return <p class="problem">{READ_PROBLEMS.impossible}</p>;
  if (labs.length === 0) return <div aria-live="polite" />;
  const { lab, spreadE00 } = meanReading(labs);
  return (
    <div aria-live="polite">
      <p class="digits">
        {WORDS.mean(labText(lab))}
        {spreadE00 !== undefined && `, ${WORDS.spread(differenceText(spreadE00))}`}
      </p>
      {spreadE00 === undefined && <p class="quiet small">{WORDS.single}</p>}
      {spreadE00 !== undefined && spreadE00 > WIDE_E00 && <p class="quiet small">{WORDS.wide}</p>}
    </div>
  );
}
