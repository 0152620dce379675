import { expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import type { Jar } from '../../../src/logbook/fold/mix/jars';
import { eventsOf } from '../../../src/screens/piece/events';
import { check, id, JAR, layCoat, PIECE, sand, startPiece, strike } from '../../logbook/entries';
import { aShop } from '../../parts/an-outlook';

const OTHER = id(0xa2);
const ZONE = id(0xd1);

test('a line names the place it was done at, and counts the coats of that place', () => {
  const edge = { kind: 'zone-described', piece: PIECE, zoneId: ZONE, name: 'Lower edge', is: 'chip' };
  const { piece, shop } = aShop(
    { hour: 1, body: edge as EntryBody },
    { hour: 2, body: { ...layCoat(), zoneId: ZONE } as EntryBody },
    { hour: 3, body: layCoat() },
    { hour: 4, body: { ...layCoat(), zoneId: ZONE } as EntryBody },
  );
  expect(eventsOf(piece, shop).map(({ what }) => what)).toEqual([
    'Started',
    'Place marked, Lower edge',
    'Coat 1, Lower edge',
    'Coat 1',
    'Coat 3, Lower edge', // the second coat went over all of it
  ]);
});

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
    ['Coat 1', 'Sprayed, 85 µm wet.', false],
    ['Sprayed', '', true],
    ['Coat 2', 'Sprayed, 85 µm wet.', false],
    ['Scuffed', '4 µm taken off, with P800', false],
    ['Leaves a print', '', false],
    ['Finished', '', false],
  ]);
});

test('a coat opens its jar; what was poured by a matched recipe opens the recipe and the match too', () => {
  const { piece, shop } = aShop({ hour: 1, body: layCoat() });
  const opens = (seen: typeof shop) => eventsOf(piece, seen).flatMap((event) => event.opens);
  expect(opens(shop)).toEqual([{ href: `#/mix/jar/${JAR}`, name: 'Jar: Gloss' }]);
  const jar = shop.jars.get(JAR) as Jar;
  const matched = {
    ...shop,
    jars: new Map([[JAR, { ...jar, weighUp: 'w' }]]),
    weighUps: new Map([['w', { recipe: 'r' }]]),
    recipes: new Map([['r', { id: 'r', name: 'Old white', version: 2 }]]),
    matches: new Map([['m', { id: 'm', name: 'Cabinet', accepted: { recipe: 'r' } }]]),
  } as unknown as typeof shop;
  expect(opens(matched).map(({ href, name }) => [href, name])).toEqual([
    [`#/mix/jar/${JAR}`, 'Jar: Gloss'],
    ['#/mix/recipe/r', 'Recipe: Old white, version 2'],
    ['#/match/m', 'Match: Cabinet'],
  ]);
});
