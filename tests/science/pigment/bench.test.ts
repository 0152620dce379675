import { describe, expect, test } from 'vitest';
import type { Lab } from '../../../src/science/colour/lab';
import { firstBelief } from '../../../src/science/pigment/belief';
import { mixColour, threeBandModel } from '../../../src/science/pigment/colour-model';
import { LACQUER_SURFACE } from '../../../src/science/pigment/saunderson';
import { type Bench, suggestAddition } from '../../../src/science/pigment/suggest';

const WHITE: Lab<'D65/10'> = { white: 'D65/10', L: 95.5, a: -0.8, b: 2.2 };
// Invented pastes: a weak yellow, one ten times as strong and a little redder, and a black.
const WEAK = { K: [0.005, 0.01, 0.2], S: [0, 0, 0] };
const STRONG = { K: [0.04, 0.16, 2], S: [0, 0, 0] };
const BLACK = { K: [10, 10, 10], S: [0, 0, 0] };
const model = threeBandModel(WHITE, [WEAK, STRONG, BLACK], LACQUER_SURFACE);
const belief = firstBelief([0.001, 0.001, 0.001]);
const jarOf = (whiteGrams: number, ...tinterGrams: number[]) => ({ whiteGrams, tinterGrams });

/** What is to be added to a jar that shall become another, on a bench with these limits. */
function asked(
  jar: ReturnType<typeof jarOf>,
  wanted: ReturnType<typeof jarOf>,
  bench: Partial<Bench>,
  toleranceE00 = 1.5,
) {
  const usual: Bench = { scaleDivisionG: 0.01, forms: ['neat'], roomGrams: 100 };
  const target = mixColour(model, wanted);
  return suggestAddition({ model, belief, jar, target, toleranceE00, bench: { ...usual, ...bench } });
}
const whatOf = (said: ReturnType<typeof asked>) =>
  said.kind === 'add' ? said.additions.map(({ what }) => what) : said.kind;

describe('what stands on the bench decides what is added', () => {
  const jar = jarOf(200, 0, 0, 0);
  const wanted = jarOf(200, 6, 0, 0);

  test.each([
    { why: 'room for the tinter that hits it', roomGrams: 50, what: [0] },
    { why: 'room to the last gram', roomGrams: 6.5, what: [0] },
    { why: 'room only for one that comes near enough', roomGrams: 5, what: [1] },
    { why: 'room for neither', roomGrams: 0.3, what: 'out-of-reach' },
  ])('$why', ({ roomGrams, what }) => {
    expect(whatOf(asked(jar, wanted, { roomGrams }))).toEqual(what);
  });

  // A jar of 20 g that wants 0.4 g of white: "make a let-down of it" would help nobody.
  test.each([
    { scaleDivisionG: 0.01, toleranceE00: 0.1, what: ['white'] },
    { scaleDivisionG: 2, toleranceE00: 0.1, what: 'as-near-as-it-gets' },
    { scaleDivisionG: 2, toleranceE00: 0.2, what: 'stop' },
  ])('white on a scale of $scaleDivisionG g: $what', ({ scaleDivisionG, toleranceE00, what }) => {
    const said = asked(jarOf(20, 0, 0, 0.5), jarOf(20.4, 0, 0, 0.5), { scaleDivisionG }, toleranceE00);
    expect(whatOf(said)).toEqual(what);
  });

  test.each([
    {
      what: 'of two that come well within it the smaller amount is added, though the larger would hit it',
      tinters: [WEAK, { K: [0.048, 0.105, 2], S: [0, 0, 0] }],
      jar: jarOf(200, 0, 0),
      target: jarOf(200, 6, 0),
      toleranceE00: 1.5,
      added: [1],
    },
    {
      what: 'white is left where a pale tinter leads back too, though less of the white would',
      tinters: [{ K: [0.003, 0.003, 0.004], S: [0.9, 0.9, 0.9] }, BLACK],
      jar: jarOf(200, 0, 0.5),
      target: jarOf(220, 0, 0.5),
      toleranceE00: 0.6,
      added: [0],
    },
  ])('$what', ({ tinters, jar, target, toleranceE00, added }) => {
    const model = threeBandModel(WHITE, tinters, LACQUER_SURFACE);
    const bench: Bench = { scaleDivisionG: 0.01, forms: ['neat'], roomGrams: 100 };
    const belief = firstBelief([0.001, 0.001]);
    const aim = mixColour(model, target);
    expect(whatOf(suggestAddition({ model, belief, jar, target: aim, toleranceE00, bench }))).toEqual(added);
  });

  // Grams of the weak yellow that 200 g lack; a gain under 0.05 is none (judgement, no source).
  test.each([
    { lacking: 0.025, what: 'stop' },
    { lacking: 0.03, what: 'as-near-as-it-gets' },
    { lacking: 0.06, what: [1] },
  ])('a gain that nobody would see is no reason to add: $lacking g, $what', ({ lacking, what }) => {
    expect(whatOf(asked(jar, jarOf(200, lacking, 0, 0), { scaleDivisionG: 1e-4 }, 0.05))).toEqual(what);
  });

  test('tells how far off a sure mix may be: 0.25 in L*, a* and b*, as the formula weighs them', () => {
    // At a grey of L* 50 a unit of L* or b* is about one of difference, and one of a* 1.5: equations 4, 18 and 19.
    const dark = jarOf(200, 0, 0, 7);
    const said = asked(dark, jarOf(200, 0, 0, 7.5), {}, 0.3);
    const off = said.kind === 'add' ? said.uncertaintyE00 : 0;
    expect(off / (0.25 * Math.sqrt((1 + 1.5 ** 2 + 1) / 3))).toBeCloseTo(1, 1);
  });

  test('without a tinter and nothing to gain from white, it stays as it is', () => {
    const bare = { model: threeBandModel(WHITE, [], LACQUER_SURFACE), belief: firstBelief([]) };
    const bench: Bench = { scaleDivisionG: 1, forms: ['neat'], roomGrams: 100 };
    const target = { ...WHITE, L: 95 };
    expect(suggestAddition({ ...bare, jar: jarOf(20), target, toleranceE00: 0.2, bench })).toMatchObject({
      kind: 'as-near-as-it-gets',
    });
  });
});
