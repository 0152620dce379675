import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { type OfferedReading, readingsFromFile } from '../../../actions/match/readings-from-file';
import type { Match } from '../../../logbook/fold/piece/matches';
import { Notice } from '../../../parts/blocks/notice';
import type { Result } from '../../../result';
import { labOf, type ReadingValue } from '../../../shop/colour/lab-of';
import { lightWords } from '../../../words/match/match';
import { READ_WORDS as WORDS } from '../../../words/match/read';
import { Ticks } from '../ticks';
import type { ReadDrafts } from './use-read-drafts';

interface FileReadingsProps {
  readonly match: Match;
  readonly drafts: ReadDrafts;
  readonly isTried: boolean;
}

/** Reads a file from the instrument on this phone, and lets its readings be ticked; what is wrong is named by its line. */
export function FileReadings({ match, drafts, isTried }: FileReadingsProps) {
  const id = useId();
  const read = useSignal<Result<OfferedReading[], string[]> | undefined>(undefined);
  const { fromFile } = drafts;

  async function open(file: File | undefined): Promise<void> {
    if (!file) return;
    const result = readingsFromFile(await file.text(), match.white);
    read.value = result;
    fromFile.value = result.ok && result.value.length === 1 ? result.value : [];
  }

  const offered = read.value?.ok ? read.value.value : [];
  return (
    <div class="stack">
      <div class="field">
        <label for={id}>{WORDS.file}</label>
        <input
          id={id}
          type="file"
          accept=".csv,.txt,.cgats,.cgt,.it8,.ti3,text/plain,text/csv"
          aria-describedby={`${id}-hint`}
          onChange={(event) => void open(event.currentTarget.files?.[0])}
        />
        <p id={`${id}-hint`} class="hint">
          {WORDS.fileHint}
        </p>
      </div>
      {read.value && !read.value.ok && (
        <Notice kind="stop" title={WORDS.fileWrong} isNew>
          <ul class="plain-list">
            {read.value.failure.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </Notice>
      )}
      {offered.length > 0 && (
        <Ticks
          label={WORDS.fileChoose}
          hint={WORDS.fileFound(offered.length)}
          options={offered.map((one) => ({
            value: String(one.line),
            label: WORDS.fileRow(one.line, one.name),
            hint: hintOf(one, match),
          }))}
          ticked={new Set(fromFile.value.map(({ line }) => String(line)))}
          onTick={(line, isTicked) => {
            fromFile.value = offered.filter((one) =>
              String(one.line) === line ? isTicked : fromFile.value.includes(one),
            );
          }}
          problem={problemOf(fromFile.value, isTried)}
        />
      )}
    </div>
  );
}

function problemOf(chosen: readonly OfferedReading[], isTried: boolean): string | undefined {
  if (chosen.some(({ white }) => white !== chosen[0]?.white)) return WORDS.fileMixed;
  return isTried && chosen.length === 0 ? WORDS.fileNone : undefined;
}

function hintOf({ reading, white }: OfferedReading, match: Match): string {
  const light = white === match.white ? '' : `, ${lightWords(white)}`;
  if (reading.as === 'lab') return `${reading.L.text} / ${reading.a.text} / ${reading.b.text}${light}`;
  const lab = labOf(reading as ReadingValue, white);
  return lab ? `${WORDS.spectrum}, L* ${lab.L.toFixed(1)}` : WORDS.spectrum;
}
