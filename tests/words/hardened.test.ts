import { describe, expect, test } from 'vitest';
import type { Outlook } from '../../src/actions/outlook/outlook';
import { careFrom } from '../../src/screens/piece/record/from-facts';
import { momentsOf } from '../../src/verdicts/moments';
import { momentWords } from '../../src/words/piece/moments';
import { dateWords } from '../../src/words/times';
import { DAY_1_MS } from '../logbook/entries';
import { anOutlook, HOURS } from '../parts/an-outlook';

const HOUR_MS = 3_600_000;

/** A lacquer is settled after 500 to 1500 h, most likely 1000; what cures has a law besides. */
function worked(isCure: boolean): Extract<Outlook, { state: 'ready' }> {
  const made = anOutlook({ ...HOURS, settled: [500, 1000, 1500] });
  return isCure
    ? { ...made, estimate: { ...made.estimate, law: { finish: 'urethane' } } as typeof made.estimate }
    : made;
}

describe('never called fully hardened before the model says that it sinks no more', () => {
  test.each([
    { what: 'lacquer, before its band', isCure: false, hour: 400, says: 'Hard by', care: 'is hard by about' },
    {
      what: 'lacquer, past its likely time',
      isCure: false,
      hour: 1499,
      says: 'Hard by',
      care: 'is hard by about',
    },
    {
      what: 'lacquer, past the late end',
      isCure: false,
      hour: 1500,
      says: 'Fully hardened by',
      care: 'is fully hardened by about',
    },
    {
      what: 'a finish that cures, ahead of its cure',
      isCure: true,
      hour: 400,
      says: 'Fully hardened by',
      care: 'is fully hardened by about',
    },
  ])('$what', ({ isCure, hour, says, care }) => {
    const outlook = worked(isCure);
    const nowMs = DAY_1_MS + hour * HOUR_MS;
    const moments = momentsOf({ coats: [{ atMs: DAY_1_MS }], sandings: [] }, outlook, nowMs);
    const words = moments.map((moment) => momentWords(moment, nowMs));
    expect(words.at(-1)).toBe(says);
    expect(words.filter((text) => /hard/i.test(text))).toHaveLength(1);
    expect(careFrom(outlook, nowMs)).toContain(`The finish ${care}`);
  });

  test('a film that a check found soft is called soft, whatever the date', () => {
    const nowMs = DAY_1_MS + 2000 * HOUR_MS;
    expect(careFrom(worked(false), nowMs, true)).toMatch(/^When it was last tried it was still soft/);
    const settled = { name: 'settled', lateMs: nowMs - HOUR_MS } as const;
    expect(momentWords(settled, nowMs)).toBe('Fully hardened by');
    expect(momentWords({ ...settled, isFoundSoft: true }, nowMs)).toBe('Hard by');
  });

  test('where the late end is never reached the likely date is named, and that it may be later', () => {
    const care = careFrom(anOutlook(), DAY_1_MS + 1e6 * HOUR_MS); // settled after 1000 h, most likely
    const likely = dateWords(DAY_1_MS + 1000 * HOUR_MS, 0);
    expect(care).toContain(
      `most likely hard by about ${likely}, and may stay soft for over a year: treat it as soft`,
    );
    const never = careFrom(anOutlook({ ...HOURS, settled: [500, Infinity, Infinity] }), DAY_1_MS);
    expect(never).toContain('The finish may stay soft for over a year: treat it as soft.');
    expect(never).not.toMatch(/by about/);
  });
});
