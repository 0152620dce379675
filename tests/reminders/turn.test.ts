import { expect, test } from 'vitest';
import type { GivenAnswer } from '../../src/reminders/phone/kept';
import { notificationOptions } from '../../src/reminders/phone/notification';
import { toShow } from '../../src/reminders/phone/turn';
import type { Reminder } from '../../src/reminders/reminder';
import { toUpcoming, type Upcoming } from '../../src/reminders/upcoming';
import { utc } from '../planner/a-bench';

const at = (time: string): number => utc(`2026-03-02 ${time}`);
const ms = (time: string): number => at(time) * 60_000;
const coat: Reminder = { id: 'next-coat:s1', kind: 'next-coat', at: at('14:00'), pieceId: 'p1' };
const rags: Reminder = { id: 'rags:20514', kind: 'rags', at: at('14:05') };
const late: Reminder = {
  id: 'move-piece:s1',
  kind: 'move-piece',
  at: at('15:00'),
  until: at('15:30'),
  pieceId: 'p1',
};
const named = (): string => 'Box';

test('one reminder is a notification with both answers, that leads to its piece', () => {
  const [one] = toUpcoming([coat], named) as [Upcoming];
  expect(one).toMatchObject({ title: 'Next coat: Box', address: '#/piece/p1', mustAcknowledge: false });
  const options = notificationOptions(one) as NotificationOptions & { actions: { action: string }[] };
  expect(options.actions.map(({ action }) => action)).toEqual(['done', 'later']);
});

test('reminders that fall together are one notification, which stays when one is about fire', () => {
  const [one, ...others] = toUpcoming([coat, rags], named);
  expect(others).toEqual([]);
  expect(one).toMatchObject({
    ids: ['rags:20514', 'next-coat:s1'],
    title: '2 reminders',
    mustAcknowledge: true,
  });
  const options = notificationOptions(one as Upcoming) as { actions?: { action: string }[] };
  expect(options.actions?.map(({ action }) => action)).toEqual(['later']);
});

const upcoming = toUpcoming([coat, late], named);
const answered = (answer: 'done' | 'later', time: string, id = 'next-coat:s1'): GivenAnswer[] => [
  { ids: [id], answer, atMs: ms(time) },
];
test.each([
  { what: 'nothing before its time', now: '13:59', shown: [], answers: [], titles: [] },
  { what: 'what is due', now: '14:00', shown: [], answers: [], titles: ['Next coat: Box'] },
  {
    what: 'what was due a while ago',
    now: '15:29',
    shown: ['next-coat:s1'],
    answers: [],
    titles: ['Move the piece: Box'],
  },
  { what: 'nothing twice', now: '14:30', shown: ['next-coat:s1'], answers: [], titles: [] },
  { what: 'nothing that is done', now: '14:30', shown: [], answers: answered('done', '14:01'), titles: [] },
  {
    what: 'nothing that was just put off',
    now: '14:20',
    shown: ['next-coat:s1'],
    answers: answered('later', '14:01'),
    titles: [],
  },
  {
    what: 'again what was put off',
    now: '14:21',
    shown: ['next-coat:s1'],
    answers: answered('later', '14:01'),
    titles: ['Next coat: Box'],
  },
  {
    what: 'what was put off beyond its use, once its time has come',
    now: '15:46',
    shown: ['next-coat:s1', 'move-piece:s1'],
    answers: answered('later', '15:25', 'move-piece:s1'),
    titles: ['Move the piece: Box'],
  },
  {
    what: 'nothing that was put off and comes too late even so',
    now: '16:16', // put off from 15:00 to 15:45, of use for 30 min
    shown: ['next-coat:s1', 'move-piece:s1'],
    answers: answered('later', '15:25', 'move-piece:s1'),
    titles: [],
  },
  {
    what: 'nothing that was put off twice before the second time',
    now: '14:30',
    shown: ['next-coat:s1'],
    answers: [...answered('later', '14:01'), ...answered('later', '14:15')],
    titles: [],
  },
  {
    what: 'nothing again that was put off and shown again',
    now: '14:25',
    shown: ['next-coat:s1', `next-coat:s1 ${ms('14:21')}`],
    answers: answered('later', '14:01'),
    titles: [],
  },
  { what: 'nothing that comes too late', now: '15:31', shown: ['next-coat:s1'], answers: [], titles: [] },
])('the worker shows $what', ({ now, shown, answers, titles }) => {
  expect(toShow({ upcoming, shown, answers, nowMs: ms(now) }).map(({ title }) => title)).toEqual(titles);
});
