import { expect, test } from 'vitest';
import { toldSoFar } from '../../../../src/actions/outlook/learn/told-so-far';
import { createEstimator, type Estimator } from '../../../../src/estimator/run/client';
import type { Entry, EntryBody } from '../../../../src/logbook/entry';
import { fold } from '../../../../src/logbook/fold/fold';
import { correct, DAY_1_MS, entry, fillJar, id, layCoat, startPiece, strike } from '../../../logbook/entries';
import { worker } from '../../a-shop';

const DAY_MS = 86_400_000;
const COAT_MS = DAY_1_MS + DAY_MS;
const [A, B, C] = [id(0xa1), id(0xa2), id(0xa3)];
const at = (n: number, days: number, body: object): Entry =>
  entry(n, body as EntryBody, COAT_MS + days * DAY_MS);
const gum = (piece: string, result: 'passes' | 'fails', more: object = {}) => ({
  kind: 'checked',
  piece,
  test: 'gum',
  result,
  ...more,
});
const thick = { ...layCoat(A), film: { by: 'wet', wetFilm: { text: '170', unit: 'um' } } } as EntryBody;
const jar = at(1, -40, fillJar());
const started = (n: number, piece: string): Entry => at(n, -39, { ...startPiece(piece), base: 'sealed' });
const ALONE = [
  jar,
  started(2, A),
  at(3, 0, layCoat(A)),
  at(4, 2, gum(A, 'fails')),
  at(5, 4, gum(A, 'passes')),
];

/** The estimator, noting what it is asked. */
function noted() {
  const estimator = createEstimator(() => worker());
  const asked: Parameters<Estimator['estimate']>[0][] = [];
  let weighed = 0;
  const by: Estimator = {
    ...estimator,
    estimate(request) {
      asked.push(request);
      return estimator.estimate(request);
    },
    weigh(request) {
      weighed++;
      return estimator.weigh(request);
    },
  };
  return { by, asked, weighings: () => weighed };
}
const told = async (entries: readonly Entry[]) => (await toldSoFar(fold(entries), noted().by))[0];

test('what was undone or corrected since is taken as it is now, whenever that was said', async () => {
  const alone = await told(ALONE);
  const undone = [...ALONE, at(10, -1, layCoat(A)), at(11, 9, strike(id(10)))];
  expect(await told(undone)).toEqual(alone);
  const corrected = [...ALONE.filter(({ id: one }) => one !== id(3)), at(3, 0, thick)];
  expect((await told(corrected))?.likely).toBeGreaterThan(1.5 * (alone?.likely ?? 0));
  const film = { by: 'wet', wetFilm: { text: '85', unit: 'um' } } as const;
  expect(await told([...corrected, at(12, 9, correct(id(3), { film }))])).toEqual(alone);
});

test('checks that were written down under an earlier day and set right later count as they are now', async () => {
  const early = [
    ...ALONE.slice(0, 3),
    at(4, -3, gum(A, 'fails')),
    at(5, -2, gum(A, 'passes')),
    at(6, 9, correct(id(4), { at: at(4, 2, {}).at })),
    at(7, 9, correct(id(5), { at: at(5, 4, {}).at })),
  ];
  expect(await told(early)).toEqual(await told(ALONE));
});

test('a date is named by its piece, or by the place on it', async () => {
  const lid = id(0xe1);
  const mm = (text: string) => ({ text, unit: 'mm' });
  const zone = {
    kind: 'zone-described',
    piece: A,
    zoneId: lid,
    name: 'Lid',
    is: 'chip',
    length: mm('40'),
    width: mm('30'),
    overspray: mm('5'),
  };
  const zoned = [
    jar,
    started(2, A),
    at(8, -1, zone),
    at(3, 0, { ...layCoat(A), zoneId: lid }),
    at(4, 2, gum(A, 'fails', { zoneId: lid })),
    at(5, 4, gum(A, 'passes', { zoneId: lid })),
  ];
  expect(await told(ALONE)).toMatchObject({ stand: A, name: 'Small box', jar: 'Gloss' });
  const onLid = await told(zoned);
  expect(onLid).toMatchObject({ stand: lid, name: 'Lid', finish: 'nitrocellulose' });
  expect(onLid?.product).toBe((await told(ALONE))?.product);
  expect(onLid?.product).toContain('nitrocellulose');
});

test('what another piece had taught is worked out once for all the dates after it, and nothing that taught nothing', async () => {
  const { by, asked, weighings } = noted();
  const g = (text: string) => ({ text, unit: 'g' });
  const entries = [
    ...ALONE,
    started(20, B),
    at(21, -20, layCoat(B)),
    at(22, -18, gum(B, 'fails')),
    started(23, C),
    at(24, 1, layCoat(C)),
    at(25, 2, gum(C, 'fails')),
    at(26, 4, gum(C, 'passes')),
    at(27, -9, {
      kind: 'card-made',
      card: id(0xc1),
      area: { text: '200', unit: 'cm2' },
      faces: 1,
      bare: g('1'),
      division: g('0.001'),
    }),
  ];
  const dates = await toldSoFar(fold(entries), by);
  expect(dates.map(({ stand }) => stand)).toEqual([A, C]);
  expect(asked.map(({ checks }) => checks.length)).toEqual([1, 0, 0]); // the first piece, then each date
  for (const { whatIf, nextCoat } of asked) expect([whatIf, nextCoat]).toEqual([[], undefined]);
  expect(weighings()).toBe(0);
});
