import { expect, test } from 'vitest';
import { foundIn, toldSoFar } from '../../../../src/actions/outlook/learn/told-so-far';
import { createEstimator } from '../../../../src/estimator/run/client';
import type { Entry, EntryBody } from '../../../../src/logbook/entry';
import { fold } from '../../../../src/logbook/fold/fold';
import { DAY_1_MS, entry, fillJar, id, JAR, layCoat, startPiece } from '../../../logbook/entries';
import { worker } from '../../a-shop';

const DAY_MS = 86_400_000;
const COAT_MS = DAY_1_MS + DAY_MS;
let n = 100;
const checked = (
  piece: string,
  result: 'passes' | 'fails',
  days: number,
  test: 'gum' | 'print' | 'smell' | 'blush' = 'gum',
): Entry => entry(n++, { kind: 'checked', piece, test, result } as EntryBody, COAT_MS + days * DAY_MS);
const begun = (piece: string): Entry[] => [
  entry(n++, { ...startPiece(piece), base: 'sealed' } as EntryBody),
  entry(n++, layCoat(piece), COAT_MS),
];
const A = id(0xa1);
const B = id(0xa2);
const JARS = [entry(1, fillJar(JAR))];

test('a date counts where a check failed before and one passed after, not too far apart', () => {
  const found = (...checks: Entry[]) =>
    foundIn(fold([...JARS, ...begun(A), ...checks])).map(({ found: ms }) => Number((ms / DAY_MS).toFixed(3)));
  expect(found(checked(A, 'fails', 2), checked(A, 'passes', 4))).toEqual([2.828]); // the root of 2 x 4
  expect(found(checked(A, 'fails', 1), checked(A, 'fails', 2), checked(A, 'passes', 4))).toEqual([2.828]);
  expect(found(checked(A, 'passes', 4))).toEqual([]);
  expect(found(checked(A, 'fails', 2))).toEqual([]);
  expect(found(checked(A, 'fails', 1), checked(A, 'passes', 4))).toEqual([]);
  expect(found(checked(A, 'fails', 2, 'print'), checked(A, 'passes', 4, 'print'))).toEqual([]);
  expect(found(checked(A, 'fails', -0.5), checked(A, 'passes', 0.9))).toEqual([]);
  expect(found(checked(A, 'fails', 1), checked(A, 'passes', 3))).toEqual([1.732]); // as far apart as may be
  expect(found(checked(A, 'passes', 2), checked(A, 'fails', 3))).toEqual([]);
  expect(found(checked(A, 'fails', 2), checked(A, 'passes', 4), checked(A, 'fails', 6))).toEqual([2.828]);
  // Tried in the very minute of the coat: of the film before it.
  expect(found(checked(A, 'passes', 0), checked(A, 'fails', 2), checked(A, 'passes', 4))).toEqual([2.828]);
});

test('each test asks for its own date, in the order of the last coats; a piece without one has none', () => {
  const all = [
    entry(n++, { ...startPiece(B), base: 'sealed' } as EntryBody),
    entry(n++, layCoat(B), COAT_MS - DAY_MS),
    ...(['smell', 'blush'] as const).flatMap((by) => [
      checked(B, 'fails', 2, by),
      checked(B, 'passes', 4, by),
    ]),
    checked(A, 'fails', 2),
    checked(A, 'passes', 4),
    entry(n++, startPiece(id(0xa3))),
    checked(id(0xa3), 'fails', 2),
    checked(id(0xa3), 'passes', 4),
  ];
  const found = foundIn(fold([...JARS, ...begun(A), ...all]));
  expect(found.map(({ stand, test: by, asked }) => [stand.id, by, asked])).toEqual([
    [B, 'smell', 'rubOut'],
    [A, 'gum', 'level'],
  ]);
});

const CURED: readonly Entry[] = [
  entry(1, {
    ...(fillJar(JAR) as Extract<EntryBody, { kind: 'jar-filled' }>),
    product: { finish: 'precatalysed', volumeSolids: { text: '22', unit: '%' } },
  } as EntryBody),
];
const HOUR = 1 / 24;

test('of a finish that cures the last print counts, for it can then be coated again', async () => {
  const checks = [checked(A, 'fails', 0.5 * HOUR, 'print'), checked(A, 'passes', HOUR, 'print')];
  const shop = fold([...CURED, ...begun(A), ...checks]);
  expect(foundIn(shop).map(({ test: by, asked }) => [by, asked])).toEqual([['print', 'recoat']]);
  const [told] = await toldSoFar(
    shop,
    createEstimator(() => worker()),
  );
  // Of 20 um usually after 52 minutes, of these 12 sooner; to be sanded after days.
  expect((told?.likely ?? 0) / 60_000).toBeGreaterThan(25);
  expect((told?.likely ?? 0) / 60_000).toBeLessThan(52);
  expect(told).toMatchObject({ finish: 'precatalysed', jar: 'Gloss', test: 'print' });
});

test('is held against the date of the last coat, which its own checks have not moved, and earlier checks of others have', async () => {
  const estimator = createEstimator(() => worker());
  const own = [checked(A, 'fails', 2), checked(A, 'passes', 4)];
  const told = async (...more: Entry[]) => {
    const [first] = await toldSoFar(fold([...JARS, ...begun(A), ...own, ...more]), estimator);
    return first;
  };
  const alone = await told();
  expect(alone?.found).toBeCloseTo(Math.sqrt(8) * DAY_MS, -3);
  expect(alone?.earliest).toBeLessThan(alone?.likely as number);
  expect(alone?.late).toBeGreaterThan(alone?.likely as number);
  // Far too late to gum, had it been known: but it was not, when the last coat went on.
  expect(await told(checked(A, 'fails', 1.5), checked(A, 'fails', 1.7))).toEqual(alone);
  // The same on another piece, after this one's last coat: not known then either.
  const later = [...begun(B), checked(B, 'fails', 1.5), checked(B, 'fails', 2)];
  expect((await told(...later))?.likely).toBe(alone?.likely);
  // A week before this one's last coat it was known, and the date is later for it.
  const earlier = later.map((one) => ({
    ...one,
    at: new Date(Date.parse(one.at) - 30 * DAY_MS).toISOString(),
  }));
  const jarsBefore = JARS.map((one) => ({ ...one, at: '2026-01-01T00:00:00.000Z' }));
  const shop = fold([...jarsBefore, ...begun(A), ...own, ...earlier]);
  const [first] = await toldSoFar(shop, estimator);
  expect(first?.likely).toBeGreaterThan((alone?.likely as number) * 1.02);
});

test('a card that was weighed before the last coat has taught, by how much it still lost; one that says nothing has not', async () => {
  const CARD = id(0xc1);
  const film = { by: 'wet', wetFilm: { text: '85', unit: 'um' } };
  const g = (text: string) => ({ text, unit: 'g' });
  const daysBefore = (days: number) => COAT_MS - days * DAY_MS;
  const area = { text: '200', unit: 'cm2' };
  const line = (body: object, days: number) => entry(n++, body as EntryBody, daysBefore(days));
  // Of 1.7 mL, weighed some hours and a day after.
  const card = (first: string, mass: string) => [
    line({ kind: 'card-made', card: CARD, area, faces: 1, bare: g('1'), division: g('0.001') }, 10),
    line({ kind: 'card-coated', card: CARD, jar: JAR, how: 'spray', film }, 9.9),
    line({ kind: 'card-weighed', card: CARD, mass: g(first) }, 9.8),
    line({ kind: 'card-weighed', card: CARD, mass: g(mass) }, 9),
  ];
  const jars = JARS.map((one) => ({ ...one, at: '2026-01-01T00:00:00.000Z' }));
  const own = [...begun(A), checked(A, 'fails', 2), checked(A, 'passes', 4)];
  const estimator = createEstimator(() => worker());
  const told = async (more: Entry[], by = estimator) =>
    (await toldSoFar(fold([...jars, ...own, ...more]), by))[0]?.likely;
  const alone = (await told([])) as number;
  expect(await told(card('1.32', '1.3'))).toBeLessThan(alone * 0.9); // it still lost much
  expect(await told(card('1.315', '1.312'))).toBeGreaterThan(alone * 1.1); // it lost next to nothing
  const dumb = { ...estimator, weigh: () => ({ result: Promise.reject(new Error('unsolvable')) }) };
  expect(await told(card('1.32', '1.3'), dumb as unknown as typeof estimator)).toBe(alone);
});
