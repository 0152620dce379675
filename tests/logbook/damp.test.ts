import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../src/logbook/entry';
import { fold } from '../../src/logbook/fold/fold';
import { USUAL_BLUSH_LIMITS } from '../../src/science/air/blush';
import { blushSeen, ownBlush } from '../../src/shop/air/blush-seen';
import { jarBlush, withMoreRetarder, worstBlush } from '../../src/shop/air/jar-blush';
import { latestAir, measuredAir, woodMoisture } from '../../src/shop/air/measured-air';
import { whatHelps } from '../../src/shop/air/what-helps';
import { DAY_1_MS, entry, fillJar, id, inTurn, JAR, layCoat, PIECE, startPiece } from './entries';

type Read = Extract<EntryBody, { kind: 'air-read' }>;
const C = (text: string) => ({ text, unit: 'C' }) as const;
const percent = (text: string) => ({ text, unit: '%' }) as const;
const read = (airC: string, humidity: string, more: Partial<Read> = {}): EntryBody => ({
  kind: 'air-read',
  temperature: C(airC),
  humidity: percent(humidity),
  movement: 'gentle',
  ...more,
});
const shopOf = (...bodies: EntryBody[]) => fold(bodies.map(inTurn));
const airOf = (...bodies: EntryBody[]) => {
  const air = latestAir(shopOf(...bodies));
  if (!air) throw new Error('no air');
  return air;
};

// A humid afternoon (common practice, no source), to 0.1 K: 27 °C, 78 %, piece 24 °C.
describe('a humid afternoon', () => {
  const afternoon = airOf(read('27', '78', { pieceTemperature: C('24') }));

  test('dew point 22.8 °C, margin of the piece 1.2 K', () => {
    expect(afternoon.dewPointC).toBeCloseTo(22.8, 1);
    expect(afternoon.marginK).toBeCloseTo(1.2, 1);
  });

  test('warming the piece to the room gives 4.2 K: still under 5 K', () => {
    const help = whatHelps(afternoon, undefined, USUAL_BLUSH_LIMITS).find(({ by }) => by === 'piece-to-room');
    expect(help).toMatchObject({ outlook: 'expect-blush' });
    expect(help && 'marginK' in help && help.marginK).toBeCloseTo(4.2, 1);
  });

  test('it would be easy with the piece at 33.8 °C, or with air of about 42 %', () => {
    const helps = whatHelps(afternoon, undefined, USUAL_BLUSH_LIMITS);
    const warmed = helps.find(({ by }) => by === 'piece-to');
    expect(warmed?.by === 'piece-to' && warmed.pieceC).toBeCloseTo(33.8, 1);
    const drier = helps.find(({ by }) => by === 'drier-air');
    expect(drier?.by === 'drier-air' && drier.humidity).toBeCloseTo(0.42, 1);
  });

  test('the forecast’s drier day is offered with its margin; its night too, only where it is better', () => {
    const forecast: EntryBody = {
      kind: 'forecast-set',
      dayTemperature: C('27'),
      nightTemperature: C('16'),
      dayFrom: '07:00',
      nightFrom: '19:00',
      humidity: percent('60'),
      movement: 'still',
    };
    const shop = shopOf(read('27', '78', { pieceTemperature: C('24') }), forecast);
    const helps = whatHelps(afternoon, shop.forecast, USUAL_BLUSH_LIMITS);
    const day = helps.find(({ by }) => by === 'forecast-day');
    expect(day && 'marginK' in day && day.marginK).toBeCloseTo(8.4, 1); // 60 %: 8.4 K
    expect(helps.some(({ by }) => by === 'forecast-night')).toBe(false);
  });
});

describe('what is no help is not offered', () => {
  const helpsOf = (air: ReturnType<typeof airOf>, forecast?: object) =>
    whatHelps(
      air,
      forecast &&
        shopOf({
          kind: 'forecast-set',
          dayFrom: '07:00',
          nightFrom: '19:00',
          movement: 'still',
          ...forecast,
        } as EntryBody).forecast,
      USUAL_BLUSH_LIMITS,
    ).map(({ by }) => by);

  test('the room to a piece that is as warm, or warmer', () => {
    expect(helpsOf(airOf(read('27', '78')))).not.toContain('piece-to-room');
    expect(helpsOf(airOf(read('27', '78', { pieceTemperature: C('28') })))).not.toContain('piece-to-room');
  });

  // Dew point 32.3 °C in air of 34 °C and 90 %: 43.3 °C would be easy, and 40 °C is the most for a piece.
  test('more warmth than a piece is given', () => {
    expect(helpsOf(airOf(read('34', '90')))).not.toContain('piece-to');
    expect(helpsOf(airOf(read('27', '90')))).toContain('piece-to');
  });

  test('air drier than any', () => {
    expect(helpsOf(airOf(read('27', '78', { pieceTemperature: C('-15') })))).not.toContain('drier-air');
  });

  // 27 °C and 60 % have their dew point at 18.6 °C: in a night of 15 °C dew falls, and no margin is left.
  test('a night in which dew falls has no margin, and none below nothing', () => {
    const forecast = { dayTemperature: C('27'), nightTemperature: C('15'), humidity: percent('60') };
    const bodies = {
      kind: 'forecast-set',
      dayFrom: '07:00',
      nightFrom: '19:00',
      movement: 'still',
      ...forecast,
    };
    const wet = airOf(read('27', '78', { pieceTemperature: C('20') }));
    const helps = whatHelps(wet, shopOf(bodies as EntryBody).forecast, USUAL_BLUSH_LIMITS);
    expect(helps.find(({ by }) => by === 'forecast-night')).toMatchObject({ marginK: 0 });
  });

  test('a forecast that does not say how damp it will be, or that is no better', () => {
    const warm = { dayTemperature: C('27'), nightTemperature: C('26') };
    expect(helpsOf(airOf(read('27', '78')), warm)).not.toContain('forecast-day');
    expect(helpsOf(airOf(read('27', '78')), { ...warm, humidity: percent('78') })).not.toContain(
      'forecast-day',
    );
    expect(helpsOf(airOf(read('27', '90')), { ...warm, humidity: percent('60') })).toEqual(
      expect.arrayContaining(['forecast-day', 'forecast-night']),
    );
  });
});

test('nothing is asked for where it is easy already', () => {
  expect(whatHelps(airOf(read('21', '40')), undefined, USUAL_BLUSH_LIMITS)).toEqual([]);
});

test('the hygrometer’s correction is added to what it shows', () => {
  expect(airOf(read('20', '50', { correction: percent('-4') })).humidity).toBeCloseTo(0.46, 9);
});

// Wood Handbook, equilibrium moisture content at 21.1 °C and 50 %: 9.2 %.
test('wood is said nothing of below -1 °C', () => {
  const said = ['-2', '-1', '0'].map((celsius) => woodMoisture(airOf(read(celsius, '50'))) !== undefined);
  expect(said).toEqual([false, true, true]);
});

test('wood comes to 9.2 % in air of 21 °C and 50 %', () => {
  expect(woodMoisture(airOf(read('21.1', '50')))).toBeCloseTo(0.092, 3);
});

describe('a jar’s own solvents', () => {
  const jars = (more: object = {}) => shopOf({ ...fillJar(), ...more } as EntryBody).jars.get(JAR);
  const jar = jars();
  if (!jar) throw new Error('no jar');

  test('more damp never looks better', () => {
    const order = ['stays-clear', 'may-blush', 'blushes'];
    const outlooks = [20, 40, 60, 80, 95].map(
      (humidity) => jarBlush(jar, airOf(read('21', String(humidity))))?.outlook ?? '',
    );
    const places = outlooks.map((outlook) => order.indexOf(outlook));
    expect(places).toEqual([...places].sort());
    expect(outlooks[0]).toBe('stays-clear');
    expect(outlooks.at(-1)).toBe('blushes');
  });

  test('retarder lessens the cooling', () => {
    const air = airOf(read('21', '60'));
    const less = jarBlush(withMoreRetarder(jar, 0.1), air);
    expect(less?.coolsToK).toBeLessThan(jarBlush(jar, air)?.coolsToK ?? 0);
  });

  test.each([
    { has: undefined, more: 0.1, becomes: 0.1 },
    { has: { of: 'mix', percent: 0.15 }, more: 0.1, becomes: 0.25 },
    { has: { of: 'lacquer', percent: 0.25 }, more: 0.05, becomes: 0.25 }, // a quarter of the lacquer is a fifth of the two
    { has: { of: 'mix', percent: 0.25 }, more: 0.1, becomes: 0.3 }, // no more is advised
  ])('retarder of $has.percent of the $has.of and $more more are $becomes of the mix', (row) => {
    const retarder = row.has && {
      of: row.has.of as 'mix',
      solvent: 'pma',
      percent: { si: row.has.percent, typed: { text: '', unit: '%' as const } },
    };
    const more = withMoreRetarder({ ...jar, ...(retarder && { retarder }) }, row.more).retarder;
    expect(more?.percent.si).toBeCloseTo(row.becomes, 9);
    expect(more?.percent.typed).toEqual({ text: String(row.becomes * 100), unit: '%' });
    expect(more).toMatchObject({ of: 'mix', solvent: retarder ? 'pma' : '2-butoxyethanol' });
  });

  test('below 0 °C and above 50 °C nothing is said', () => {
    const said = ['-1', '0', '50', '51'].map(
      (celsius) => jarBlush(jar, airOf(read(celsius, '30'))) !== undefined,
    );
    expect(said).toEqual([false, true, true, false]);
  });

  test('waterborne has no blush to look out for', () => {
    const water = jars({ product: { finish: 'waterborne', volumeSolids: percent('30') } });
    expect(water && jarBlush(water, airOf(read('21', '80')))).toBeUndefined();
  });
});

describe('the person’s own limit', () => {
  const blushed = (result: 'fails' | 'passes'): EntryBody => ({
    kind: 'checked',
    piece: PIECE,
    test: 'blush',
    result,
  });

  test('is learned from coats that were looked at, with the air they were laid in', () => {
    const shop = shopOf(startPiece(), fillJar(), read('21', '60'), layCoat(), blushed('fails'));
    const [seen] = blushSeen(shop);
    const reading = shop.airReadings[0];
    expect(seen?.blushed).toBe(true);
    expect(seen?.marginK).toBeCloseTo(reading ? measuredAir(reading, shop).marginK : 0, 9);
    expect(ownBlush(shop).limitK).toBeGreaterThan(5);
  });

  test('a coat without any reading near it teaches nothing', () => {
    const far = fold([
      entry(1, startPiece()),
      entry(2, fillJar()),
      entry(3, read('21', '60')),
      entry(4, layCoat(), DAY_1_MS + 30 * 3_600_000),
      entry(5, blushed('fails'), DAY_1_MS + 31 * 3_600_000),
    ]);
    expect(blushSeen(far)).toEqual([]);
    expect(ownBlush(far).limits).toEqual(USUAL_BLUSH_LIMITS);
  });

  test('a reading four hours old still speaks for a coat, one a minute older does not', () => {
    const seenAfter = (minutes: number) =>
      blushSeen(
        fold([
          entry(1, startPiece()),
          entry(2, fillJar()),
          entry(3, read('21', '60'), DAY_1_MS),
          entry(4, layCoat(), DAY_1_MS + minutes * 60_000),
          entry(5, blushed('fails'), DAY_1_MS + 600 * 60_000),
        ]),
      ).length;
    expect([seenAfter(240), seenAfter(241)]).toEqual([1, 0]);
  });

  test('each check is of the coat before it, and only looking for blush counts', () => {
    const shop = shopOf(
      startPiece(),
      fillJar(),
      read('21', '85'),
      layCoat(),
      blushed('fails'),
      { ...blushed('passes'), test: 'print' } as EntryBody,
      read('21', '40'),
      layCoat(),
      blushed('passes'),
    );
    const [first, second, ...more] = blushSeen(shop);
    expect(more).toEqual([]);
    expect([first?.blushed, second?.blushed]).toEqual([true, false]);
    expect(first?.marginK).toBeLessThan(3); // the dew point of 21 °C is 18.4 °C at 85 %, 6.9 °C at 40 %
    expect(second?.marginK).toBeGreaterThan(13);
  });

  test('a coat that names its reading is held to that one', () => {
    const coat = { ...layCoat(), air: id(3) } as EntryBody;
    const shop = shopOf(startPiece(), fillJar(), read('21', '85'), read('21', '40'), coat, blushed('fails'));
    expect(blushSeen(shop)[0]?.marginK).toBeLessThan(3);
  });
});

describe('a coat is expected to turn white by whichever is worse, the margin of the piece or the solvents of the jar', () => {
  // By definition of the two scales: the same word stands on the air's page and on the piece's.
  test.each([
    ['easy', 'stays-clear', 'easy'],
    ['easy', 'may-blush', 'care'],
    ['easy', 'blushes', 'expect-blush'],
    ['care', 'stays-clear', 'care'],
    ['care', 'blushes', 'expect-blush'],
    ['expect-blush', 'stays-clear', 'expect-blush'],
    ['below-floor', 'blushes', 'below-floor'],
    ['easy', undefined, 'easy'],
  ] as const)('%s and %s: %s', (byMargin, byJar, worst) => {
    expect(worstBlush(byMargin, byJar)).toBe(worst);
  });
});
