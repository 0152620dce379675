import { expect, test } from 'vitest';
import { lawOutlook } from '../../../../src/actions/outlook/law-outlook';
import { learnedSoFar } from '../../../../src/actions/outlook/learn/learned-so-far';
import { taughtTo } from '../../../../src/actions/outlook/learn/taught';
import type { Outlook } from '../../../../src/actions/outlook/outlook';
import { requestFor } from '../../../../src/actions/outlook/request';
import { FINISH_LAWS } from '../../../../src/estimator/finishes/finish-law';
import { createEstimator } from '../../../../src/estimator/run/client';
import type { Entry, EntryBody } from '../../../../src/logbook/entry';
import { fold, type Shop } from '../../../../src/logbook/fold/fold';
import type { Piece } from '../../../../src/logbook/fold/piece/pieces';
import { standById } from '../../../../src/shop/zone/stands';
import { DAY_1_MS, entry, fillJar, id, JAR, layCoat, startPiece } from '../../../logbook/entries';
import { worker } from '../../a-shop';

const COAT_MS = DAY_1_MS + 86_400_000;
const [A, B] = [id(0xa1), id(0xa2)];
const CARD = id(0xc1);
const begun = (at: number, piece: string): Entry[] => [
  entry(at, startPiece(piece)),
  entry(at + 1, layCoat(piece), COAT_MS),
];
const cured = (): EntryBody => ({
  ...(fillJar(JAR) as Extract<EntryBody, { kind: 'jar-filled' }>),
  product: { finish: 'precatalysed', volumeSolids: { text: '22', unit: '%' } },
});
const gum = (at: number, result: 'passes' | 'fails', share: number): Entry =>
  entry(
    at,
    { kind: 'checked', piece: A, test: 'gum', result } as EntryBody,
    COAT_MS + share * FINISH_LAWS.precatalysed.level.typical * 1000,
  );
const NOW_MS = COAT_MS + 30 * 86_400_000;

function outlookOf(pieceId: string, shop: Shop, outlooks = new Map<string, Outlook>()) {
  const stand = standById(pieceId, shop);
  if (!stand) throw new Error('There is no such piece.');
  const outlook = lawOutlook(
    stand.piece,
    shop,
    NOW_MS,
    taughtTo(stand, { shop, outlooks, cards: new Map() }).law,
  );
  if (outlook?.state !== 'ready') throw new Error('It was not worked out.');
  return outlook;
}

test('paper that gums on a piece that cures puts off its own date, and that of the next one, and is told', () => {
  const bare = [entry(1, cured()), ...begun(2, A), ...begun(4, B)];
  const [level, next] = [A, B].map((piece) => outlookOf(piece, fold(bare)).estimate.milestones.level);
  const shop = fold([...bare, gum(10, 'fails', 1), gum(11, 'fails', 1.5), gum(12, 'passes', 2)]);
  const checked = outlookOf(A, shop);
  expect(checked.estimate.milestones.level.likelyS).toBeGreaterThan((level?.likelyS ?? 0) * 1.2);
  const outlooks = new Map<string, Outlook>([[A, checked]]);
  const after = outlookOf(B, shop, outlooks).estimate.milestones.level;
  expect(after.likelyS).toBeGreaterThan((next?.likelyS ?? 0) * 1.1);
  expect(after.likelyS).toBeLessThan(checked.estimate.milestones.level.likelyS);
  const [told, ...others] = learnedSoFar({ shop, outlooks, cards: new Map() });
  expect(others).toEqual([]);
  expect(told?.jar).toBe('Gloss');
  expect(told?.slower).toBeCloseTo(after.likelyS / (next?.likelyS ?? 1), 1);
  // The law's band is 3 to 8 days, a factor 1.63 either way; three checks narrow it.
  expect(told?.within).toBeLessThan(Math.sqrt(8 / 3));
  expect(told?.within).toBeGreaterThan(1.1);
});

// One piece that gums at twice the usual time is no surer than before. Said of six, "give or take 2.5" was no answer.
test('six pieces that gummed long after the usual date say so surely', async () => {
  const estimator = createEstimator(() => worker());
  const ids = [1, 2, 3, 4, 5, 6].map((k) => id(0xd0 + k));
  const usual = await estimate(A, fold([entry(1, fillJar()), ...begun(2, A)]));
  const foundS = 2.5 * usual.milestones.level.likelyS;
  const tried = (piece: string, at: number, result: string, share: number): Entry =>
    entry(at, { kind: 'checked', piece, test: 'gum', result } as EntryBody, COAT_MS + share * foundS * 1000);
  const shop = fold([
    entry(1, fillJar()),
    ...ids.flatMap((piece, i) => [
      ...begun(10 * i + 2, piece),
      tried(piece, 10 * i + 4, 'fails', 1 / 1.3),
      tried(piece, 10 * i + 5, 'passes', 1.3),
    ]),
  ]);
  async function estimate(piece: string, of: Shop) {
    const asked = requestFor(of.pieces.get(piece) as Piece, of, NOW_MS);
    if (!asked.ok) throw new Error(asked.failure.kind);
    return estimator.estimate(asked.value.request).result;
  }
  const one = await estimate(ids[0] as string, shop);
  const outlooks = new Map(
    ids.map((piece): [string, Outlook] => [
      piece,
      { state: 'ready', estimate: one, startMs: COAT_MS, stale: false },
    ]),
  );
  const [told] = learnedSoFar({ shop, outlooks, cards: new Map() });
  expect(told?.slower).toBeGreaterThan(1.7);
  expect(told?.slower).toBeLessThan(2.5);
  expect(told?.within).toBeLessThan(1.75);
});

test('what a card told of a lacquer is told of its product, slower where solvent moves slowly', () => {
  const g = (text: string) => ({ text, unit: 'g' }) as const;
  const shop = fold([
    entry(1, fillJar()),
    ...begun(2, A),
    entry(5, {
      kind: 'card-made',
      card: CARD,
      piece: A,
      area: { text: '200', unit: 'cm2' },
      faces: 1,
      bare: g('1'),
      division: g('0.001'),
    }),
    entry(6, {
      kind: 'card-coated',
      card: CARD,
      coat: id(3),
      jar: JAR,
      how: 'spray',
      film: { by: 'wet', wetFilm: { text: '85', unit: 'um' } },
    }),
    entry(7, { kind: 'card-weighed', card: CARD, mass: g('1.3') }),
  ]);
  const told = (mean: number, spread: number) =>
    learnedSoFar({
      shop,
      outlooks: new Map(),
      cards: new Map([
        [CARD, { state: 'ready', startMs: 0, isGuessed: false, reading: { diffusivity: { mean, spread } } }],
      ]) as never,
    })[0];
  // ln D of -0.47 is a factor 1.6 slower.
  expect(told(-0.47, 0.05)?.slower).toBeCloseTo(1.6, 0);
  expect(told(0.47, 0.05)?.slower).toBeCloseTo(1 / 1.6, 1);
  expect(told(-0.47, 0.05)?.within).toBeLessThan(told(-0.47, 0.3)?.within ?? 0);
  expect(told(0, 0.72)).toBeUndefined(); // as much as was believed before
});
