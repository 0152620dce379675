import { describe, expect, test } from 'vitest';
import { reminderName } from '../../../src/actions/reminders/reminder-name';
import { reminderOfId } from '../../../src/actions/reminders/reminder-of-id';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { fillJar, id, inTurn, JAR, layCoat, PIECE, startPiece } from '../../logbook/entries';

const [TRAY, CARD, FILTER] = [id(0xa2), id(0xc1), id(0xf1)];
const step = (n: number) => ({ kind: 'work', id: id(n), task: 'level-sand', place: 'bench', minutes: 60 });
const plan = (piece: string, ...steps: number[]): EntryBody =>
  ({ kind: 'piece-planned', piece, coatsADay: 3, steps: steps.map(step) }) as unknown as EntryBody;
const BODIES: readonly EntryBody[] = [
  startPiece(),
  { ...startPiece(TRAY), name: 'Tray' } as EntryBody,
  fillJar(),
  { kind: 'filter-opened', filter: FILTER, part: 'cartridge', name: 'A2' } as EntryBody,
  {
    kind: 'card-made',
    card: CARD,
    piece: TRAY,
    area: { text: '200', unit: 'cm2' },
    faces: 1,
    bare: { text: '1', unit: 'g' },
    division: { text: '0.001', unit: 'g' },
  },
  layCoat(PIECE), // the sixth
  layCoat(PIECE),
  layCoat(TRAY),
  plan(PIECE, 0x21, 0x22),
  plan(TRAY, 0x31, 0x32),
];
const shop = fold(BODIES.map(inTurn));

test.each([
  { what: 'a piece', of: { pieceId: PIECE }, is: 'Small box' },
  { what: 'a jar', of: { thingId: JAR }, is: 'Gloss' },
  { what: 'a cartridge', of: { thingId: FILTER }, is: 'A2' },
  { what: 'a card, by the piece beside which it lies', of: { thingId: CARD }, is: 'Tray' },
  { what: 'nothing that has a name', of: {}, is: undefined },
])('a reminder of $what is told by the name $is', ({ of, is }) => {
  expect(reminderName(of, shop)).toBe(is);
});

describe('what an answer knows of its reminder by the id alone', () => {
  test.each([
    {
      what: 'a step, wherever in its plan it stands',
      about: `scuff:${id(0x22)}`,
      pieceId: PIECE,
      stepId: id(0x22),
    },
    { what: 'a step of another plan', about: `scuff:${id(0x31)}`, pieceId: TRAY, stepId: id(0x31) },
    { what: 'the last coat of a piece', about: `rub-out:${id(7)}`, pieceId: PIECE },
    { what: 'the last coat of another', about: `rub-out:${id(8)}`, pieceId: TRAY },
    { what: 'a coat that is covered', about: `rub-out:${id(6)}` },
    { what: 'the shop', about: 'rags:20514' },
    { what: 'nothing named', about: 'rags' },
  ])('is $what', ({ about, pieceId, stepId }) => {
    expect(reminderOfId(about, shop)).toEqual({
      id: about,
      kind: about.split(':')[0],
      ...(pieceId && { pieceId }),
      ...(stepId && { stepId }),
    });
  });

  test('is nothing where it is no id of ours', () => {
    expect(reminderOfId('test', shop)).toBeUndefined();
    expect(reminderOfId('', shop)).toBeUndefined();
  });
});
