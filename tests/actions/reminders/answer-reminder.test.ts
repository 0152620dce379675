import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { log } from '../../../src/actions/log';
import { planPiece } from '../../../src/actions/plan/plan-piece';
import { answerReminder } from '../../../src/actions/reminders/answer-reminder';
import { followReminders } from '../../../src/actions/reminders/follow-reminders';
import { reminderOfId } from '../../../src/actions/reminders/reminder-of-id';
import type { PlanStep } from '../../../src/logbook/kinds/shop/plan';
import { id } from '../../logbook/entries';
import { aBoxAndAJar, done, NOW_MS } from '../a-shop';

const MINUTE_MS = 60_000;
const STEPS: PlanStep[] = [
  { kind: 'work', id: id(0x21), task: 'scuff', place: 'bench', minutes: 10 },
  { kind: 'work', id: id(0x22), task: 'coat', place: 'booth', minutes: 10, isCoat: true },
  { kind: 'work', id: id(0x23), task: 'coat', place: 'booth', minutes: 10, isCoat: true },
];

async function planned(withCoat: boolean, steps: PlanStep[] = STEPS) {
  const { open, piece, jar } = await aBoxAndAJar();
  done(await planPiece(open.needs, { piece, coatsADay: 3, steps }, NOW_MS - 70 * MINUTE_MS));
  const film = { by: 'wet', wetFilm: { text: '85', unit: 'um' } } as const;
  if (withCoat) done(await open.actions.layCoat({ piece, jar, how: 'spray', film }, NOW_MS - 60 * MINUTE_MS));
  return { open, piece };
}

const coatReminder = (piece: string) => ({
  id: `next-coat:${id(0x23)}`,
  kind: 'next-coat' as const,
  pieceId: piece,
  stepId: id(0x23),
});

test('"done" lays the coat as the one before, at the instant of the tap', async () => {
  const { open, piece } = await planned(true);
  done(await answerReminder(open.needs, coatReminder(piece), 'done', NOW_MS - 2 * MINUTE_MS));
  const coats = open.shop.value.pieces.get(piece)?.coats ?? [];
  expect(coats).toHaveLength(2);
  expect(coats[1]).toMatchObject({ how: 'spray', film: { wetFilm: { typed: { text: '85', unit: 'um' } } } });
  expect(coats[1]?.atMs).toBe(NOW_MS - 2 * MINUTE_MS);
});

test('"done" of a first coat says where to lay it, and logs nothing', async () => {
  const { open, piece } = await planned(false);
  const before = open.shop.value.entries.size;
  const answered = await answerReminder(open.needs, coatReminder(piece), 'done', NOW_MS);
  expect(answered).toMatchObject({ ok: false, failure: { sentence: expect.stringContaining('Log a coat') } });
  expect(open.shop.value.entries.size).toBe(before);
});

test('"done" of a scuff marks its step', async () => {
  const { open, piece } = await planned(false);
  const reminder = { id: `scuff:${id(0x21)}`, kind: 'scuff' as const, pieceId: piece, stepId: id(0x21) };
  done(await answerReminder(open.needs, reminder, 'done', NOW_MS));
  expect(open.shop.value.stepMarks).toMatchObject([{ step: id(0x21), as: 'done' }]);
});

test('the end of the day that is confirmed answers for the rags of the last coat, once it is laid', async () => {
  const { open } = await planned(true, STEPS.slice(0, 2));
  const rags = () => {
    const { due, missed, upcoming } = followReminders(open).value;
    return [...due, ...missed, ...upcoming].filter(({ kind }) => kind === 'rags').length;
  };
  const endDay = async (atMs: number) =>
    done(await log(open.needs, 'cautions-read', { act: 'end-day', cautions: ['fire-rags'] }, atMs));
  expect(rags()).toBe(1);
  await endDay(NOW_MS - 65 * MINUTE_MS);
  expect(rags()).toBe(1);
  await endDay(NOW_MS - MINUTE_MS);
  expect(rags()).toBe(0);
});

test('"later" is kept as an answer', async () => {
  const { open, piece } = await planned(true);
  done(await answerReminder(open.needs, coatReminder(piece), 'later', NOW_MS));
  expect(open.shop.value.reminderAnswers).toMatchObject([{ answer: 'later' }]);
});

test('an id tells its piece and step, long after the reminder', async () => {
  const { open, piece } = await planned(true);
  const last = open.shop.value.pieces.get(piece)?.coats.at(-1)?.id ?? '';
  const shop = open.shop.value;
  expect(reminderOfId(`next-coat:${id(0x23)}`, shop)).toMatchObject({ pieceId: piece, stepId: id(0x23) });
  expect(reminderOfId(`level-sand:${last}`, shop)).toEqual({
    id: `level-sand:${last}`,
    kind: 'level-sand',
    pieceId: piece,
  });
  expect(reminderOfId('rags:20514', shop)).toEqual({ id: 'rags:20514', kind: 'rags' });
  expect(reminderOfId('test', shop)).toBeUndefined();
});

test('"done" lays the last coat of the kind that comes next: no flash, no drop', async () => {
  const { open, piece } = await planned(true);
  const jar = open.shop.value.pieces.get(piece)?.coats[0]?.jar ?? '';
  const wet = (um: string) => ({ by: 'wet', wetFilm: { text: um, unit: 'um' } }) as const;
  const usual = { by: 'usual', dryFilm: { text: '150', unit: 'um' } } as const;
  const lay = (how: 'flash' | 'brush-fill', minutesAgo: number) =>
    open.actions.layCoat(
      { piece, jar, how, film: how === 'flash' ? wet('30') : usual },
      NOW_MS - minutesAgo * MINUTE_MS,
    );
  done(await lay('flash', 50));
  const last = () => open.shop.value.pieces.get(piece)?.coats.at(-1);
  // Of no step: whatever was laid last, a flash is no coat.
  const { stepId: _, ...ofNoStep } = coatReminder(piece);
  done(await answerReminder(open.needs, ofNoStep, 'done', NOW_MS - 40 * MINUTE_MS));
  expect(last()?.how).toBe('spray');
  done(await lay('brush-fill', 30));
  done(await answerReminder(open.needs, coatReminder(piece), 'done', NOW_MS - 20 * MINUTE_MS));
  expect(last()?.how).toBe('spray');
  done(await lay('brush-fill', 10));
  done(await answerReminder(open.needs, ofNoStep, 'done', NOW_MS));
  expect(last()?.how).toBe('brush-fill');
});
