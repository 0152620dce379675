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
});

const upcoming = toUpcoming([coat, late], named);
const answered = (answer: 'done' | 'later', time: string): GivenAnswer[] => [
  { ids: ['next-coat:s1'], answer, atMs: ms(time) },
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
  { what: 'nothing that comes too late', now: '15:31', shown: ['next-coat:s1'], answers: [], titles: [] },
])('the worker shows $what', ({ now, shown, answers, titles }) => {
  expect(toShow({ upcoming, shown, answers, nowMs: ms(now) }).map(({ title }) => title)).toEqual(titles);
});
