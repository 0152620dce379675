import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import type { Match } from '../../../src/logbook/fold/piece/matches';
import { advise } from '../../../src/shop/colour/advice';
import { matchJar, partsOf } from '../../../src/shop/colour/jar-content';
import { modelOf } from '../../../src/shop/colour/model';
import { MATCH, MatchOnPaper, tinterId, trialId, WHITE } from './a-match';

const CREAM = [['86.5', '-0.6', '14.8']] as const;
const BASE = [['95.5', '-0.8', '2.2']] as const;
const adviceOf = (match: Match) => advise(match, [match], {});
const begun = (tinters: ConstructorParameters<typeof MatchOnPaper>[0], more = {}) =>
  new MatchOnPaper(tinters, { through: 'bare', ...more }).read({ as: 'target' }, CREAM);
const withBase = (tinters: ConstructorParameters<typeof MatchOnPaper>[0], more = {}) =>
  begun(tinters, more)
    .mix(1, [[WHITE, '200']])
    .read(1, BASE);

describe('what is missing is asked for in the order of work', () => {
  test.each([
    { what: 'target', match: new MatchOnPaper(['ochre']).fold() },
    {
      what: 'firm-target',
      match: new MatchOnPaper(['ochre']).read({ as: 'target' }, CREAM, { isDry: false }).fold(),
    },
    { what: 'white', match: begun(['ochre']).fold() },
    {
      what: 'base-reading',
      match: begun(['ochre'])
        .mix(1, [[WHITE, '200']])
        .fold(),
    },
    {
      what: 'trial-reading',
      match: withBase(['ochre'])
        .mix(2, [[tinterId('ochre'), '1']])
        .fold(),
    },
    { what: 'tinters', match: withBase(['ochre'], { tinters: [{ ingredient: tinterId('ochre') }] }).fold() },
  ])('$what', ({ what, match }) => {
    expect(adviceOf(match)).toMatchObject({ kind: 'missing', missing: { what } });
  });
});

test('a first addition darkens and yellows: ochre is in it, and white is not', () => {
  const advice = adviceOf(withBase(['ochre', 'raw umber', 'black']).fold());
  if (advice.kind !== 'advice' || advice.suggestion.kind !== 'add') throw new Error('No addition.');
  const named = advice.suggestion.additions.map(({ what }) =>
    what === 'white' ? what : advice.tinters[what],
  );
  expect(named).toContain(tinterId('ochre'));
  expect(named).not.toContain('white');
  for (const { grams } of advice.suggestion.additions) expect((grams / 0.01) % 1).toBeCloseTo(0, 6); // whole divisions
});

test('a blue target is out of reach of earth colours, and it says what is left', () => {
  const blue = new MatchOnPaper(['ochre', 'raw umber'], { through: 'bare' })
    .read({ as: 'target' }, [['60', '-2', '-30']])
    .mix(1, [[WHITE, '200']])
    .read(1, BASE);
  const advice = adviceOf(blue.fold());
  if (advice.kind !== 'advice' || advice.suggestion.kind !== 'out-of-reach') throw new Error('Within reach.');
  expect(advice.suggestion.left[0]?.direction).toBe('yellow');
});

test('a jar with no room for it puts the target out of reach', () => {
  const full = withBase(['ochre', 'raw umber', 'black'], { jarHolds: { text: '200', unit: 'g' } });
  expect(adviceOf(full.fold())).toMatchObject({ kind: 'advice', suggestion: { kind: 'out-of-reach' } });
});

test('a tinter that proves weaker than thought is believed weaker', () => {
  // Twice as far from the base as ochre of usual strength would lead is taken for strength, half as far for weakness.
  const led = (b: string) =>
    withBase(['ochre'])
      .mix(2, [[tinterId('ochre'), '4']])
      .read(2, [['93', '-1', b]])
      .fold();
  const factorOf = (match: Match) => {
    const advice = adviceOf(match);
    return advice.kind === 'advice' ? advice.strengths[0]?.factor : undefined;
  };
  expect(factorOf(led('6'))).toBeLessThan(factorOf(led('16')) ?? 0);
});

test('a draw-down of this base from another match is used, one of another base is not', () => {
  const tint = { as: 'tint', tinter: tinterId('ochre'), share: { text: '5', unit: '%' } } as const;
  const drawn = withBase(['ochre'])
    .read(tint, [['85', '0', '25']])
    .fold();
  const other = { ...drawn, id: 'another', base: 'another base' };
  const plain = withBase(['ochre']).fold();
  expect(modelOf(plain, [plain, { ...drawn, id: 'another' }])?.tinters[0]?.from).toBe('drawn-down');
  expect(modelOf(plain, [plain, other])?.tinters[0]?.from).toBe('usual');
});

describe('the model goes wavelength by wavelength', () => {
  const flat = (reflectance: number, wavelengths = 31) => ({
    as: 'spectrum' as const,
    startNm: 400,
    stepNm: 10,
    reflectance: new Array<number>(wavelengths).fill(reflectance),
  });
  const ochre = { as: 'tint', tinter: tinterId('ochre'), share: { text: '5', unit: '%' } } as const;
  const umber = { ...ochre, tinter: tinterId('raw umber') } as const;
  const said = (of: object, reading: object) =>
    ({
      kind: 'colour-read',
      match: MATCH,
      of,
      white: 'D65/10',
      isDry: true,
      readings: [reading],
    }) as EntryBody;
  const isSpectral = (base: object, ...tints: readonly (readonly [object, object])[]) => {
    const match = begun(['ochre', 'raw umber'], { tinters: [{ ingredient: tinterId('ochre') }] })
      .mix(1, [[WHITE, '200']])
      .say(said({ as: 'trial', trial: trialId(1) }, base));
    for (const [of, reading] of tints) match.say(said(of, reading));
    const folded = match.fold();
    return modelOf(folded, [folded])?.isSpectral;
  };
  const lab = {
    as: 'lab',
    ...Object.fromEntries(['L', 'a', 'b'].map((key) => [key, { text: '50', unit: 'ratio' }])),
  };

  test('where base and tinters were read as spectra of the same wavelengths', () => {
    expect(isSpectral(flat(0.8), [ochre, flat(0.5)])).toBe(true);
    expect(isSpectral(flat(0.8), [ochre, lab])).toBe(false);
    expect(isSpectral(lab, [ochre, flat(0.5)])).toBe(false);
    expect(isSpectral(flat(0.8), [ochre, flat(0.5, 36)])).toBe(false);
    expect(isSpectral(flat(0.8, 36), [ochre, flat(0.5)])).toBe(false);
    expect(isSpectral(flat(0.8, 36), [ochre, flat(0.5, 36)])).toBe(true);
    expect(isSpectral(flat(0.8), [ochre, { ...flat(0.5, 36), startNm: 380 }])).toBe(false);
    expect(isSpectral(flat(0.8), [umber, flat(0.5)])).toBeUndefined(); // of a tinter that is not on the bench
  });
});

test('a let-down brings its clear into the jar', () => {
  const match = withBase(['ochre'])
    .mix(2, [[tinterId('ochre'), '5', 'let-down-10']])
    .fold();
  expect(matchJar(match).tinterGrams.get(tinterId('ochre'))).toBeCloseTo(0.5, 9);
  expect(matchJar(match).clearGrams).toBeCloseTo(4.5, 9);
  expect(matchJar(match).totalGrams).toBeCloseTo(205, 9);
});

test('a recipe of the jar holds white, tinters as they came in, and the clear where it is known', () => {
  const CLEAR = tinterId('black');
  const jar = (more = {}) =>
    withBase(['ochre', 'black'], more)
      .mix(2, [[tinterId('ochre'), '5', 'let-down-10']])
      .mix(3, [[tinterId('ochre'), '1']])
      .fold();
  const parts = (upTo: number, more = {}) =>
    partsOf(jar(more), upTo).map(([ingredient, grams]) => [ingredient, Math.round(grams * 1000) / 1000]);
  expect(parts(3)).toEqual([
    [WHITE, 200],
    [tinterId('ochre'), 1.5],
  ]);
  expect(parts(2, { clear: CLEAR })).toEqual([
    [WHITE, 200],
    [tinterId('ochre'), 0.5],
    [CLEAR, 4.5],
  ]);
  expect(parts(1, { clear: CLEAR })).toEqual([[WHITE, 200]]);
});
