import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

// The map in DEVELOPERS.md: a row a folder of the house, and in it the rooms of that folder.
const table = readFileSync('DEVELOPERS.md', 'utf8').split('## The shape')[1]?.split('\n## ')[0] ?? '';
const rows = new Map(
  [...table.matchAll(/^\| `([a-z]+)\/`.*? \| (.*) \|$/gm)].map(([, room = '', text = '']) => [room, text]),
);
const foldersIn = (path: string): string[] =>
  readdirSync(path, { withFileTypes: true }).flatMap((one) => (one.isDirectory() ? [one.name] : []));
/** Rooms of these are named as the places and areas that everybody knows. */
const BY_PLACE = ['screens', 'science', 'words'];

test('the map has a row for every folder of the house, and for no other', () => {
  expect([...rows.keys()].toSorted()).toEqual(
    foldersIn('src')
      .filter((name) => name !== 'style')
      .toSorted(),
  );
});

test.each([...rows].filter(([room]) => !BY_PLACE.includes(room)))(
  'the row of %s names its rooms',
  (room, text) => {
    const untold = foldersIn(`src/${room}`).filter((name) => !new RegExp(`\\b${name}/`).test(text));
    expect(untold).toEqual([]);
    // What is written `like this/` is a room of it, unless it is a folder further down.
    const told = [...text.matchAll(/`([a-z-]+\/(?: [a-z-]+\/)*)`/g)].flatMap(([, names = '']) =>
      names.split('/ ').map((name) => name.replace('/', '')),
    );
    expect(told.filter((name) => !foldersIn(`src/${room}`).includes(name))).toEqual([]);
  },
);
