import { expect, test } from 'vitest';
import { admit } from '../../../src/logbook/admit/admit';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import {
  correct,
  DAY_1_MS,
  entry,
  fillJar,
  id,
  inTurn,
  JAR,
  MINUTE_MS,
  PIECE,
  startPiece,
  strike,
} from '../entries';

const CLOSED = id(0xa2);
const [STEP, CLOSURE, FILTER, NEW_FILTER, NOWHERE] = [id(0xc1), id(0xc2), id(0xc3), id(0xc4), id(0xff)];
const AT_NOON = '2026-03-01T12:00:00.000Z';

const plan = (piece = PIECE): EntryBody => ({
  kind: 'piece-planned',
  piece,
  coatsADay: 3,
  steps: [{ kind: 'work', id: STEP, task: 'coat', place: 'bench', minutes: 20 }],
});
const promise = (piece: string): EntryBody => ({ kind: 'piece-promised', piece, promised: AT_NOON });
const mark = (step = STEP, piece = PIECE): EntryBody => ({ kind: 'step-marked', piece, step, as: 'done' });
const lift = (closure: string): EntryBody => ({ kind: 'closure-lifted', closure });
const open = (filter: string): EntryBody => ({
  kind: 'filter-opened',
  filter,
  part: 'cartridge',
  name: 'A2',
});
const spray = (...filters: string[]): EntryBody => ({
  kind: 'spraying-ended',
  lasted: { text: '20', unit: 'min' },
  filters,
});
const throwOut = (filter: string): EntryBody => ({ kind: 'filter-thrown-out', filter });
const lead = (piece: string): EntryBody => ({ kind: 'lead-tested', piece, finding: 'found' });

const BODIES: readonly EntryBody[] = [
  startPiece(), // 1
  startPiece(CLOSED), // 2
  { kind: 'piece-closed', piece: CLOSED }, // 3
  plan(), // 4
  {
    kind: 'closure-set',
    closure: CLOSURE,
    span: { from: AT_NOON, to: '2026-03-02T12:00:00.000Z' },
    closes: 'everything',
  }, // 5
  open(FILTER), // 6
  spray(FILTER), // 7
  open(NEW_FILTER), // 8
  throwOut(NEW_FILTER), // 9
  fillJar(), // 10
];
const nowMs = DAY_1_MS + 60 * MINUTE_MS;
const instant = (minutes: number): string => new Date(DAY_1_MS + minutes * MINUTE_MS).toISOString();
const said = (body: EntryBody, minutes = 60, bodies = BODIES) => {
  const admitted = admit(entry(40, body, DAY_1_MS + minutes * MINUTE_MS), fold(bodies.map(inTurn)), nowMs);
  return admitted.ok ? 'ok' : admitted.failure.kind;
};

test.each<readonly [what: string, body: EntryBody, is: string]>([
  ['a plan', plan(), 'ok'],
  ['a plan for no piece', plan(NOWHERE), 'unknown-piece'],
  ['a plan for a finished piece', plan(CLOSED), 'piece-closed'],
  ['a promise', promise(PIECE), 'ok'],
  ['a promise of no piece', promise(NOWHERE), 'unknown-piece'],
  ['a promise of a finished piece', promise(CLOSED), 'piece-closed'],
  ['a step of the plan', mark(), 'ok'],
  ['a step of no plan', mark(NOWHERE), 'unknown-step'],
  ['a step of no piece', mark(STEP, NOWHERE), 'unknown-piece'],
  ['a step of a finished piece', mark(STEP, CLOSED), 'piece-closed'],
  ['a closure lifted', lift(CLOSURE), 'ok'],
  ['no closure lifted', lift(NOWHERE), 'unknown-closure'],
  ['a test for lead on a finished piece', lead(CLOSED), 'piece-closed'],
  ['a sheet for a jar', { ...sheet(JAR) }, 'ok'],
  ['another filter', open(NOWHERE), 'ok'],
  ['a filter thrown out', throwOut(FILTER), 'ok'],
  ['a spraying with a filter', spray(FILTER), 'ok'],
  ['a spraying with two, one of which is not there', spray(FILTER, NOWHERE), 'unknown-filter'],
  ['undoing a filter that has worn', strike(id(6)), 'still-used'],
  ['undoing the spraying', strike(id(7)), 'ok'],
  ['undoing a filter in which nobody sprayed', strike(id(8)), 'ok'],
])('%s: %s', (_, body, is) => expect(said(body)).toBe(is));

test('a step of a piece that has no plan is of no plan', () => {
  expect(said(mark(), 60, [startPiece()])).toBe('unknown-step');
});

test('a filter is thrown out no earlier than it was opened, and opened whenever it was', () => {
  expect([said(throwOut(FILTER), 5), said(throwOut(FILTER), 6)]).toEqual(['too-early', 'ok']);
  expect(said(correct(id(6), { at: instant(-90) }))).toBe('ok');
  expect(said(correct(id(9), { at: instant(7) }))).toBe('too-early');
  // Its opening was undone: nothing is left to hold its end against.
  expect(said(correct(id(9), { at: instant(7) }), 60, [...BODIES, strike(id(8))])).toBe('ok');
});

function sheet(jar: string): EntryBody {
  return {
    kind: 'sheet-entered',
    jar,
    temperature: { text: '20', unit: 'C' },
    humidity: { text: '50', unit: '%' },
    times: {},
  };
}
