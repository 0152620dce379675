import { test } from 'vitest';
import { type Entry, parseEntry } from '../../src/logbook/entry';
import { createFold, fold } from '../../src/logbook/fold/fold';
import { processorMs, say } from './clock';
import { tenYears } from './ten-years';

// Prints what a logbook costs as it grows, in processor time: reading every entry, folding them all, and taking in one more.
const NOW_MS = Date.UTC(2026, 2, 1);

function report(count: number): void {
  const rows: unknown[] = tenYears(count, NOW_MS);
  const read = (): Entry[] =>
    rows.flatMap((row) => {
      const parsed = parseEntry(row, NOW_MS);
      if (!parsed.ok) throw new Error(JSON.stringify(parsed.failure));
      return parsed.value;
    });
  const entries = read();
  const grow = createFold();
  const coat = entries.findLast(({ kind }) => kind === 'coat-laid') as Entry;
  grow(entries);
  let more = 0;
  const another = (atMs: number): Entry => ({
    ...coat,
    id: `ffffffff-0000-7000-9000-${(++more).toString(16).padStart(12, '0')}`,
    at: new Date(atMs + more).toISOString(),
  });
  const figures = [
    `read ${processorMs(read, 3).toFixed(0)} ms`,
    `fold ${processorMs(() => fold(read()), 3).toFixed(0)} ms with reading`,
    `one coat more ${processorMs(() => grow([another(NOW_MS)])).toFixed(1)} ms`,
    `one backdated ${processorMs(() => grow([another(NOW_MS - 86_400_000 * 30)])).toFixed(1)} ms`,
  ];
  say(
    `${count} entries, ${(JSON.stringify(rows).length / 1e6).toFixed(1)} MB as JSON: ${figures.join(', ')}`,
  );
}

test('logbook', () => {
  for (const count of [1_000, 10_000, 50_000]) report(count);
});
