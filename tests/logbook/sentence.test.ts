import { expect, test } from 'vitest';
import { sentenceFor, sentenceForBackup } from '../../src/logbook/sentence';

const showTime = (ms: number): string => `${ms} o'clock`;

test.each([
  {
    failure: { kind: 'full' },
    says: 'This device is full, so nothing was logged. Make room, then try again.',
  },
  { failure: { kind: 'in-the-future', latestMs: 9 }, says: "Enter a time no later than 9 o'clock." },
  {
    failure: { kind: 'too-early', earliestMs: 0, latestMs: 9 },
    says: "Enter a time from 0 o'clock, when this was started, to 9 o'clock. If it was started earlier, correct that entry first.",
  },
  {
    failure: { kind: 'faulty', issues: [{ path: 'name', problem: 'Write something here.' }] },
    says: 'name: Write something here.',
  },
] as const)('$failure.kind: $says', ({ failure, says }) => expect(sentenceFor(failure, showTime)).toBe(says));

test.each([
  {
    failure: { kind: 'damaged' },
    says: 'This backup was changed or damaged on its way. Nothing was restored; try another copy.',
  },
  {
    failure: { kind: 'faulty-entries', issues: [{ path: 'entries.3.at', problem: 'is missing' }] },
    says: 'No entry of this backup can be read. Nothing was restored.\nentries.3.at: is missing',
  },
] as const)('$failure.kind: $says', ({ failure, says }) => expect(sentenceForBackup(failure)).toBe(says));
