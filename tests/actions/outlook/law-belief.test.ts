import { expect, test } from 'vitest';
import { shopLawBelief } from '../../../src/actions/outlook/learn/shop-belief';
import { type FilmCheck, MILESTONES } from '../../../src/estimator/estimate';
import { estimateByLaw } from '../../../src/estimator/finishes/estimate-by-law';
import { FINISH_LAWS, type Spread } from '../../../src/estimator/finishes/finish-law';
import { timeAt } from '../../../src/estimator/finishes/law-belief';
import { USUAL_SHOP } from '../../../src/estimator/usual-shop';
import { CURING, onePiece } from '../../estimator/finishes/cases';
import { normal, seeded } from '../../science/pigment/hidden-pigments';

type Finish = (typeof CURING)[number];
const piece = (finish: Finish) => onePiece({ ...USUAL_SHOP, dryM: FINISH_LAWS[finish].usualDryM });
/** Pieces of one product differ by so many spreads, and a hand errs by so much of the logarithm of time. */
const [BETWEEN_PIECES, HAND] = [0.42, 0.25];

/** Tries the film at half, once, one and a half and twice the usual time, until it passes. */
function triedUntilItPasses(random: () => number, usualS: number, trueS: number): FilmCheck[] {
  const checks: FilmCheck[] = [];
  for (const share of [0.5, 1, 1.5, 2]) {
    const atS = share * usualS;
    const passes = random() < 1 / (1 + Math.exp(-Math.log(atS / trueS) / HAND));
    checks.push({ atS, test: 'gum', passes });
    if (passes) break;
  }
  return checks;
}

/** A shop whose product is slow or fast as nobody knows, three pieces of it tried with paper, and a fourth that is not. */
function fourthPiece(finish: Finish, seed: number) {
  const random = seeded(seed);
  const level: Spread = FINISH_LAWS[finish].level;
  const product = normal(random);
  const trueS = (): number => timeAt(level, product + BETWEEN_PIECES * normal(random));
  const learned = [1, 2, 3].map(() => {
    const checks = triedUntilItPasses(random, level.typical, trueS());
    return estimateByLaw(finish, { ...piece(finish), checks }).law.learned;
  });
  const belief = shopLawBelief(learned);
  if (!belief) throw new Error('Nothing was learned.');
  const taught = estimateByLaw(finish, { ...piece(finish), belief }).milestones;
  return { trueS: trueS(), taught };
}

test.each(CURING)('%s: paper tried on three pieces tells of the fourth, in 100 shops', (finish) => {
  const shops = Array.from({ length: 100 }, (_, i) => fourthPiece(finish, 7 * i + 1));
  const untaught = estimateByLaw(finish, piece(finish)).milestones.level;
  const off = (likelyS: (shop: (typeof shops)[number]) => number): number =>
    shops.reduce((sum, shop) => sum + Math.abs(Math.log(likelyS(shop) / shop.trueS)), 0) / shops.length;
  const within = shops.filter(
    ({ taught: { level }, trueS }) => level.earliestS <= trueS && trueS <= level.lateS,
  );
  expect(off(({ taught }) => taught.level.likelyS)).toBeLessThan(0.8 * off(() => untaught.likelyS));
  // Eight of ten are promised.
  expect(within.length).toBeGreaterThanOrEqual(75);
  for (const { taught } of shops)
    for (const name of MILESTONES) expect(taught[name].earliestS).toBeLessThanOrEqual(taught[name].likelyS);
});
