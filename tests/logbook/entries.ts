import type { Entry, EntryBody, EntryOf } from '../../src/logbook/entry';
import shipped from '../reference/logbook-entries-v1.json';

/** An entry of every kind as version 1 wrote it. */
export const SHIPPED: readonly Record<string, unknown>[] = shipped.entries;

/** The n-th id of a test; ids sort as their numbers do. */
export const id = (n: number): string => `019caa01-0000-7000-9000-${n.toString(16).padStart(12, '0')}`;

export const PIECE = id(0xa1);
export const JAR = id(0xb1);
export const DAY_1_MS = Date.UTC(2026, 2, 1, 8);
export const MINUTE_MS = 60_000;
export const A_YEAR_ON_MS = Date.UTC(2027, 2, 1);

const um = (text: string) => ({ text, unit: 'um' }) as const;
const percent = (text: string) => ({ text, unit: '%' }) as const;

export const startPiece = (piece = PIECE): EntryBody => ({
  kind: 'piece-started',
  piece,
  name: 'Small box',
  base: 'bare-wood',
});
export const fillJar = (jar = JAR): EntryBody => ({
  kind: 'jar-filled',
  jar,
  name: 'Gloss',
  product: { finish: 'nitrocellulose', volumeSolids: percent('22') },
  thinner: { name: 'Thinner', blend: [{ solvent: 'toluene', share: 1 }] },
  thinning: { of: 'lacquer', percent: percent('50') },
});
export const layCoat = (piece = PIECE, jar = JAR): EntryBody => ({
  kind: 'coat-laid',
  piece,
  jar,
  how: 'spray',
  film: { by: 'wet', wetFilm: um('85') },
});
export const sand = (piece = PIECE): EntryBody => ({
  kind: 'sanded',
  piece,
  removed: um('4'),
  stage: 'scuff',
});
export const check = (piece = PIECE): EntryBody => ({
  kind: 'checked',
  piece,
  test: 'print',
  result: 'fails',
});
export const correct = (entry: string, to: EntryOf<'corrected'>['to']): EntryBody => ({
  kind: 'corrected',
  entry,
  to,
});
export const strike = (entry: string): EntryBody => ({ kind: 'struck', entry });
export const photograph = (photo: string, piece = PIECE): EntryBody => ({
  kind: 'photographed',
  piece,
  photo,
  stage: 'before',
  light: 'plain',
  width: 40,
  height: 30,
  original: '0'.repeat(64),
});

/** The body as the n-th entry logged, n minutes into the first day unless told otherwise. */
export const entry = (n: number, body: EntryBody, atMs = DAY_1_MS + n * MINUTE_MS): Entry => ({
  id: id(n),
  v: 1,
  at: new Date(atMs).toISOString(),
  zone: 'Europe/Berlin',
  ...body,
});

/** A list of bodies logged one after the other, a minute apart: for `map`. */
export const inTurn = (body: EntryBody, n: number): Entry => entry(n + 1, body);
