import { expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { eventsOf } from '../../../src/screens/piece/events';
import { check, id, layCoat, PIECE, sand, startPiece, strike } from '../../logbook/entries';
import { aShop } from '../../parts/an-outlook';

const OTHER = id(0xa2);

test('the record tells what was done in order, as typed, with what was undone marked', () => {
  const { piece, shop } = aShop(
    { hour: 1, body: layCoat() }, // entry 3
    { hour: 2, body: startPiece(OTHER) },
    { hour: 3, body: layCoat() }, // entry 5
    { hour: 4, body: strike(id(5)) },
    { hour: 5, body: layCoat() },
    { hour: 6, body: { ...sand(), grit: 'P800' } as EntryBody },
    { hour: 7, body: check() },
    { hour: 8, body: { kind: 'piece-closed', piece: PIECE } },
  );
  expect(eventsOf(piece, shop).map(({ what, how, isUndone }) => [what, how, isUndone])).toEqual([
    ['Started', 'Small box', false],
    ['Coat 1', 'Sprayed, 85 µm wet. From Gloss.', false],
    ['Sprayed', '', true],
    ['Coat 2', 'Sprayed, 85 µm wet. From Gloss.', false],
    ['Scuffed', '4 µm taken off, with P800', false],
    ['Leaves a print', '', false],
    ['Finished', '', false],
  ]);
});
