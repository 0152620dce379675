import { expect, test } from 'vitest';
import { isFireKind, isOn, REMINDER_KINDS } from '../../../src/logbook/kinds/shop/reminder-kinds';
import { id } from '../entries';
import { edge, second, shipped, times, typed } from './edge';

// What is still taken, and what no longer is. Limits are judgement, no source.

const work = { kind: 'work', id: id(1), task: 'coat', place: 'bench', minutes: 10 };
const wait = (earliest: number, likely: number, late: number) => ({
  kind: 'wait',
  id: id(1),
  until: 'recoat',
  minutes: { earliest, likely, late },
});
const NOON = '2026-03-05T12:00:00.000Z';
const day = { work: [] };

edge('cautions', shipped('cautions-read'), 'cautions', [['skin']], [[]]);
edge('an act', shipped('cautions-read'), 'act', ['spray', 'brush', 'mix', 'sand', 'end-day'], ['dream']);
edge(
  'a caution to be silent',
  shipped('caution-silenced'),
  'caution',
  ['dust', 'skin'],
  ['rags', 'ignition', 'isocyanate'],
);
edge(
  'the mark of a phone',
  shipped('phone-named'),
  'phone',
  ['0123456789'],
  ['012345678', '01234567890', 'ABCDEF0123'],
);
edge('coats a day', shipped('piece-planned'), 'coatsADay', [1, 24], [0, 25]);
edge('steps', shipped('piece-planned'), 'steps', [[], times(200, work)], [times(201, work)]);
edge(
  'minutes of a step',
  shipped('piece-planned'),
  'steps',
  [[{ ...work, minutes: 0 }], [{ ...work, minutes: 1_051_200 }]],
  [[{ ...work, minutes: 1_051_201 }]],
  'steps.0.minutes',
);
edge(
  'a wait',
  shipped('piece-planned'),
  'steps',
  [[wait(1, 1, 1)], [wait(1, 2, 3)]],
  [[wait(2, 1, 3)], [wait(1, 3, 2)]],
  'steps.0.minutes',
);
edge(
  'a first task',
  shipped('piece-planned'),
  'steps',
  [[{ ...work, task: 'clean' }]],
  [[{ ...work, task: 'glue' }]],
  'steps.0.task',
);
edge(
  'a later task',
  second('piece-planned'),
  'steps',
  [[{ ...work, task: 'clean' }], [{ ...work, task: 'glue' }]],
  [[{ ...work, task: 'dream' }]],
  'steps.0.task',
);
edge(
  'a later wait',
  second('piece-planned'),
  'steps',
  [[{ ...wait(1, 1, 1), until: 'clamped' }], [wait(1, 1, 1)]],
  [[{ ...wait(1, 1, 1), until: 'never' }]],
  'steps.0.until',
);
edge('a week', shipped('hours-set'), 'week', [times(7, day)], [times(6, day), times(8, day)]);
edge(
  'a closure',
  shipped('closure-set'),
  'span',
  [{ from: NOON, to: '2026-03-05T12:00:00.001Z' }],
  [{ from: NOON, to: NOON }],
  'span.to',
);
edge(
  'reminders that are off',
  shipped('reminders-set'),
  'off',
  [[], ['scuff', 'jar-end']],
  [['rags'], ['weigh-card'], ['next-step']],
  'off.0',
);
edge(
  'later reminders that are off',
  second('reminders-set'),
  'off',
  [['weigh-card', 'next-step', 'scuff']],
  [['rags']],
  'off.0',
);
edge('a name', shipped('piece-started'), 'name', ['x', 'x'.repeat(10_000)], ['', ' ', 'x'.repeat(10_001)]);
edge('a note', shipped('piece-started'), 'note', ['', 'x'.repeat(10_000)], ['x'.repeat(10_001)]);
edge(
  'when it was',
  shipped('piece-started'),
  'at',
  ['2000-01-01T00:00:00.000Z'],
  ['1999-12-31T23:59:59.999Z', 'soon', '2026-03-01T08:00:00Z'],
);
edge(
  'where it was',
  shipped('piece-started'),
  'zone',
  ['Europe/Berlin', 'UTC'],
  ['Europe/Berlin'.padEnd(65, 'x'), ''],
);
edge(
  'an altitude',
  shipped('settings-changed'),
  'patch',
  [{ altitude: typed('-430', 'm') }, { altitude: typed('5000', 'm') }],
  [{ altitude: typed('-431', 'm') }, { altitude: typed('5001', 'm') }],
  'patch.altitude',
);
edge(
  'a correction of the hygrometer',
  shipped('air-read'),
  'correction',
  [typed('-30', '%'), typed('30', '%')],
  [typed('-31', '%'), typed('31', '%')],
);
edge(
  'the cold',
  shipped('air-read'),
  'temperature',
  [typed('-20', 'C'), typed('60', 'C')],
  [typed('-21', 'C'), typed('61', 'C')],
);

test('a reminder about fire is on, whatever is switched; any other unless it is off', () => {
  const all = Object.fromEntries(REMINDER_KINDS.map((kind) => [kind, false]));
  expect(REMINDER_KINDS.filter((kind) => isOn(kind, all))).toEqual(['rags']);
  expect(REMINDER_KINDS.filter(isFireKind)).toEqual(['rags']);
  expect(REMINDER_KINDS.filter((kind) => !isOn(kind, {}))).toEqual([]);
  expect(isOn('scuff', { scuff: true })).toBe(true);
});
