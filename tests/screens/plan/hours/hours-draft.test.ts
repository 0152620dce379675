import { describe, expect, test } from 'vitest';
import {
  isWhole,
  type StretchDraft,
  stretchProblem,
  type WeekDraft,
  weekDraft,
  weekSaid,
} from '../../../../src/screens/plan/hours/hours-draft';

const at = (open: string, close: string): StretchDraft => ({ open, close });
const MORNING = at('09:00', '12:00');
const AFTERNOON = at('14:00', '18:00');
const OFF = { work: [] };
const SAID = {
  week: [
    { work: [MORNING, AFTERNOON], booth: [at('10:00', '11:00'), AFTERNOON] },
    { work: [MORNING] },
    OFF,
    OFF,
    OFF,
    OFF,
    OFF,
  ],
  quiet: at('20:00', '08:00'),
};

function withMonday(draft: WeekDraft, stretches: readonly StretchDraft[]): WeekDraft {
  const [monday, ...rest] = draft.days;
  if (!monday) throw new Error('no Monday');
  return { ...draft, days: [{ ...monday, work: { isOn: true, stretches } }, ...rest] };
}

describe('the week as it is typed', () => {
  test('shows every stretch of a day and of the booth, and says them again unchanged', () => {
    const draft = weekDraft(SAID);
    expect(draft.days[0]?.work.stretches).toEqual([MORNING, AFTERNOON]);
    expect(draft.days[0]?.booth).toMatchObject({ isOn: true, stretches: SAID.week[0]?.booth });
    expect(weekSaid(draft)).toEqual(SAID);
  });

  test('is nine to five from Monday to Friday where nothing was set', () => {
    const { week } = weekSaid(weekDraft(undefined));
    expect(week.map(({ work }) => work.length)).toEqual([1, 1, 1, 1, 1, 0, 0]);
  });

  test('says nothing of a day that is off, its booth included', () => {
    const draft = weekDraft(SAID);
    const days = draft.days.map((day) => ({ ...day, work: { ...day.work, isOn: false } }));
    expect(weekSaid({ ...draft, days }).week).toEqual(Array.from({ length: 7 }, () => OFF));
  });

  test.each([
    { why: 'a morning and an afternoon', stretches: [MORNING, AFTERNOON], problem: undefined },
    {
      why: 'one that begins as the other ends',
      stretches: [MORNING, at('12:00', '13:00')],
      problem: undefined,
    },
    { why: 'one that runs past midnight', stretches: [MORNING, at('20:00', '02:00')], problem: undefined },
    { why: 'one that begins too soon', stretches: [MORNING, at('11:00', '13:00')], problem: 'overlaps' },
    { why: 'the afternoon first', stretches: [AFTERNOON, MORNING], problem: 'overlaps' },
    {
      why: 'one after a night',
      stretches: [at('20:00', '02:00'), at('21:00', '22:00')],
      problem: 'overlaps',
    },
    { why: 'one without its end', stretches: [MORNING, at('14:00', '')], problem: 'missing' },
  ])('$why: $problem', ({ stretches, problem }) => {
    expect(stretchProblem(stretches, 1)).toBe(problem);
    expect(isWhole(withMonday(weekDraft(SAID), stretches))).toBe(problem === undefined);
  });

  test('minds no fault of a day that is off', () => {
    const draft = withMonday(weekDraft(SAID), [MORNING, at('', '')]);
    const days = draft.days.map((day) => ({ ...day, work: { ...day.work, isOn: false } }));
    expect(isWhole({ ...draft, days })).toBe(true);
  });
});
