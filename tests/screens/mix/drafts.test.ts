import { describe, expect, test } from 'vitest';
import { type EntryBody, type EntryOf, parseEntry } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { INGREDIENT_KINDS_OF } from '../../../src/logbook/kinds/mix/ingredient';
import { FINISHES } from '../../../src/logbook/kinds/mix/jar';
import { toBuy } from '../../../src/science/film/containers';
import { areaM2, needOf, newJob } from '../../../src/screens/mix/amount/amount-draft';
import {
  ingredientProblems,
  newIngredient,
  withSort,
} from '../../../src/screens/mix/ingredient/ingredient-draft';
import { ingredientSaid } from '../../../src/screens/mix/ingredient/ingredient-said';
import {
  blendProblem,
  draftLike,
  isWhole,
  type JarDraft,
  saidOf,
  usualDraft,
  withFinish,
} from '../../../src/screens/mix/jar/jar-draft';
import { mixSolids } from '../../../src/screens/mix/jar/mix-solids';
import { MEASURE_KEYS, measureKey, measureParts } from '../../../src/screens/mix/recipe/measures';
import { ML_PER_US_FLUID_OUNCE } from '../../../src/units';
import { entry, fillJar, id, JAR } from '../../logbook/entries';

const ENVELOPE = { id: id(1), v: 1, at: '2026-03-01T08:00:00.000Z', zone: 'Europe/Berlin' };
const NOW_MS = Date.UTC(2026, 2, 2);
const draft = (some: Partial<JarDraft> = {}): JarDraft => ({
  ...usualDraft('nitrocellulose', false),
  ...some,
});
const percent = (text: string) => ({ text, unit: '%' }) as const;

describe('the jar form', () => {
  test.each(FINISHES)('of %s can be sent at once, at common practice', (finish) => {
    const usual = withFinish(draft(), finish, false);
    expect(isWhole(usual)).toBe(true);
    const parsed = parseEntry({ ...ENVELOPE, kind: 'jar-filled', jar: id(2), ...saidOf(usual) }, NOW_MS);
    expect(parsed).toMatchObject({ ok: true });
  });

  test('keeps what was typed when the finish changes, and moves the rest', () => {
    const moved = withFinish(draft({ volumeSolids: percent('19,5') }), 'conversion', false);
    expect(moved.volumeSolids.text).toBe('19,5');
    expect(moved.thinning.text).toBe('10');
  });

  test.each([
    // the trade’s worked scenario B: 22 % thinned 1:0.5 is 14.67 %
    { thinning: '50', of: 'lacquer', solids: 22 / 1.5 },
    { thinning: '50', of: 'mix', solids: 11 },
    { thinning: '10', of: 'lacquer', solids: 20 },
    { thinning: '10', of: 'mix', solids: 19.8 },
  ] as const)('thinned $thinning % of the $of comes to $solids %', ({ thinning, of, solids }) => {
    expect(mixSolids(draft({ thinning: percent(thinning), of }))).toBeCloseTo(solids / 100, 6);
  });

  // A jar that was weighed up knows its solids to six figures; nobody types so.
  test.each([
    { known: '16.3659', shown: '16.4' },
    { known: '9.8125', shown: '9.81' },
    { known: '22', shown: '22' },
    { known: '19,75', shown: '19,75' },
  ])('of another jar like one with $known % solids shows $shown', ({ known, shown }) => {
    const filled = fillJar(JAR) as EntryOf<'jar-filled'>;
    const like = { ...filled, product: { ...filled.product, volumeSolids: percent(known) } };
    const jar = fold([entry(1, like as EntryBody)]).jars.get(JAR) ?? expect.unreachable();
    expect(draftLike(jar, false).volumeSolids).toEqual(percent(shown));
  });

  test('says when thinner and retarder leave no room for lacquer', () => {
    const all = draft({ thinning: percent('90'), of: 'mix', retarder: 'dpm', retarderShare: percent('20') });
    expect(mixSolids(all)).toBe('too-thin');
  });

  test.each([
    { field: 'solids of nought', some: { volumeSolids: percent('0') } },
    { field: 'solids over 100 %', some: { volumeSolids: percent('120') } },
    { field: 'no name', some: { name: '  ' } },
    { field: 'thinner below nought', some: { thinning: percent('-5') } },
    { field: 'an amount of nought', some: { amount: { text: '0', unit: 'mL' } } },
    { field: 'a life that is no number', some: { life: { text: 'long', unit: 'd' } } },
    {
      field: 'an own thinner without a name',
      some: { thinnerSort: 'own', blend: [{ solvent: 'mek', share: '100' }] },
    },
    { field: 'an own thinner of nothing', some: { thinnerSort: 'own', thinnerName: 'Mine' } },
  ] satisfies readonly { field: string; some: Partial<JarDraft> }[])('does not send $field', ({ some }) => {
    expect(isWhole(draft(some))).toBe(false);
  });

  test.each([
    {
      blend: [
        ['mek', '60'],
        ['toluene', '40'],
      ],
      isRight: true,
    },
    {
      blend: [
        ['mek', '60'],
        ['toluene', '30'],
      ],
      isRight: false,
    },
    {
      blend: [
        ['mek', '60'],
        ['mek', '40'],
      ],
      isRight: false,
    },
    {
      blend: [
        ['mek', '100'],
        ['toluene', '0'],
      ],
      isRight: false,
    },
  ])('takes a blend $blend: $isRight', ({ blend, isRight }) => {
    const rows = blend.map(([solvent, share]) => ({ solvent, share: share ?? '' }));
    expect(blendProblem(rows) === undefined).toBe(isRight);
  });
});

describe('the ingredient form', () => {
  test.each(INGREDIENT_KINDS_OF.filter((is) => is !== 'let-down'))(
    'of a %s is whole with a name alone',
    (is) => {
      const named = { ...withSort(newIngredient('clear'), is, 'nitrocellulose'), name: 'It' };
      expect(ingredientProblems(named)).toEqual([]);
      const said = { ...ENVELOPE, kind: 'ingredient-described', ingredient: id(3), ...ingredientSaid(named) };
      expect(parseEntry(said, NOW_MS)).toMatchObject({ ok: true });
    },
  );

  test('takes a drop from the weight of twenty, and leaves out what is empty', () => {
    const tinter = {
      ...newIngredient('tinter'),
      name: 'Black',
      dropsG: '0.68',
      density: { ...newIngredient('tinter').density, text: '' },
    };
    const said = ingredientSaid(tinter);
    expect(said.dropMass?.value).toEqual({ text: '0.034', unit: 'g' });
    expect('density' in said).toBe(false);
  });

  test.each([
    { why: 'a drop of nothing', some: { dropsG: '0.68', dropsCount: '0' } },
    { why: 'a drop of ten grams', some: { dropsG: '200', dropsCount: '20' } },
    { why: 'the 30th of February', some: { opened: '2026-02-30x' } },
    { why: 'a let-down of nothing', some: { is: 'let-down' as const } },
  ])('refuses $why', ({ some }) => {
    expect(ingredientProblems({ ...newIngredient('tinter'), name: 'It', ...some })).toHaveLength(1);
  });
});

describe('how much to mix', () => {
  test('scenario B: 0.205 m2, 85 um wet, transfer 35 %, 12 coats: about 50 mL a coat, 600 mL in all', () => {
    const need = needOf({
      ...newJob(false),
      area: { text: '0.205', unit: 'm2' },
      wetFilm: { text: '85', unit: 'um' },
      transfer: '35',
      coats: '12',
    });
    expect((need?.most.perCoatM3 ?? 0) * 1e6).toBeCloseTo(49.8, 1); // expected: about 50
    expect((need?.most.sprayedM3 ?? 0) * 1e6).toBeCloseTo(597, 0); // 600
  });

  test('scenario E: 0.46 m2, 90 um wet, transfer 40 %, 3 coats: about 310 mL', () => {
    const need = needOf({
      ...newJob(false),
      area: { text: '0.46', unit: 'm2' },
      wetFilm: { text: '90', unit: 'um' },
      transfer: '40',
      holdUp: { text: '0', unit: 'mL' },
      keepBack: percent(''),
    });
    expect((need?.wholeM3 ?? 0) * 1e6).toBeCloseTo(310.5, 6);
  });

  // Worked by hand: 8.6 ft2 at 300 ft2/gal is 3.669 US fl oz, five of them 18.35, times 1.5 to 2 27.5 to 36.7.
  test('a small side table by its spreading rate, with slim legs', () => {
    const need = needOf({
      ...newJob(true),
      area: { text: '8.6', unit: 'ft2' },
      slim: 'slim',
      by: 'rate',
      coats: '5',
    });
    const ounces = (m3 = Number.NaN) => (m3 * 1e6) / ML_PER_US_FLUID_OUNCE;
    expect(ounces(need?.flat.perCoatM3)).toBeCloseTo(3.669, 3);
    expect(ounces(need?.flat.sprayedM3)).toBeCloseTo(18.347, 3);
    expect(ounces(need?.least.sprayedM3)).toBeCloseTo(27.52, 2);
    expect(ounces(need?.most.sprayedM3)).toBeCloseTo(36.69, 2);
    expect(toBuy(need?.wholeM3 ?? Number.NaN, 'us')).toEqual([{ size: 'quart', count: 2 }]);
  });

  test('the gun’s share and what is kept back come on top', () => {
    const job = { ...newJob(false), area: { text: '1', unit: 'm2' } as const, transfer: '100', coats: '1' };
    // 100 mL sprayed and 15 mL in the gun, of which 10 % are kept back: 115 / 0.9
    expect((needOf(job)?.wholeM3 ?? 0) * 1e6).toBeCloseTo(115 / 0.9, 6);
  });

  test.each(['can', 'hand'] as const)('and nothing stays in a gun where there is none: %s', (way) => {
    const area = { text: '1', unit: 'm2' } as const;
    const job = { ...newJob(false), area, way, transfer: '50', coats: '1', keepBack: percent('') };
    // 100 um on 1 m2 is 100 mL; a can sprays twice that at 50 %, by hand all of it stays.
    expect((needOf(job)?.wholeM3 ?? 0) * 1e6).toBeCloseTo(way === 'can' ? 200 : 100, 6);
    // What was typed for the gun does not matter then.
    expect(needOf({ ...job, fillings: 'none', holdUp: { text: '', unit: 'mL' } })).toBeDefined();
  });

  test.each([
    { why: 'no area', some: {} },
    { why: 'an area of nought', some: { area: { text: '0', unit: 'm2' } } },
    { why: 'half a coat', some: { area: { text: '1', unit: 'm2' }, coats: '1.5' } },
    { why: 'more on the piece than is sprayed', some: { area: { text: '1', unit: 'm2' }, transfer: '120' } },
    {
      why: 'a box without a height',
      some: { shape: 'box', sizes: { length: '1', width: '1', height: '', diameter: '' } },
    },
  ] as const)('is not worked out of $why', ({ some }) => {
    expect(needOf({ ...newJob(false), ...some })).toBeUndefined();
  });

  test('a size in inches is an inch: 10 x 10 in are 0.064516 m2', () => {
    const panel = {
      ...newJob(true),
      shape: 'panel',
      sizes: { length: '10', width: '10', height: '', diameter: '' },
    } as const;
    expect(areaM2(panel)).toBeCloseTo(0.064516, 12);
  });
});

test.each(MEASURE_KEYS)('a line said in %s is read back in it', (key) => {
  const { unit, ...more } = measureParts(key);
  expect(measureKey({ ingredient: id(1), amount: { text: '1', unit }, ...more })).toBe(key);
});

describe('weighing the drops of a bottle', () => {
  const counts = Array.from({ length: 21 }, (_, i) => i + 10);
  const MOST_HUNDREDTHS = 200; // 30 drops of 0.067 g
  test.each(counts)('takes every hundredth of a gram that %i drops can weigh', (count) => {
    for (let hundredths = 3; hundredths <= MOST_HUNDREDTHS; hundredths += 1) {
      const dropsG = (hundredths / 100).toFixed(2);
      const drops = { ...newIngredient('dye'), name: 'Dye', dropsCount: `${count}`, dropsG };
      const said = ingredientSaid(drops);
      expect(ingredientProblems(drops)).toEqual([]);
      expect(
        parseEntry({ ...ENVELOPE, kind: 'ingredient-described', ingredient: id(2), ...said }, NOW_MS).ok,
      ).toBe(true);
      expect((Number(said.dropMass?.value.text) * count * 100) / hundredths).toBeCloseTo(1, 3);
    }
  });
});
