import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { isPast, jarLife } from '../../../src/shop/jar/life';
import { DAY_1_MS, entry, fillJar, id, JAR, strike } from '../../logbook/entries';

const HOUR_MS = 3_600_000;
const catalysed = {
  ...fillJar(),
  life: { span: { text: '8', unit: 'h' }, as: 'pot' },
} as EntryBody;
const air = (celsius: string): EntryBody => ({
  kind: 'air-read',
  temperature: { text: celsius, unit: 'C' },
  humidity: { text: '50', unit: '%' },
  movement: 'gentle',
});

function lifeOf(...entries: ReturnType<typeof entry>[]) {
  const shop = fold(entries);
  const jar = shop.jars.get(JAR);
  if (!jar) throw new Error('no jar');
  return jarLife(jar, shop);
}

describe('how long a jar keeps', () => {
  test('scenario C: 8 h from 09:30 in a shop at 30 C end at about 13:30', () => {
    const halfPastNine = DAY_1_MS + 1.5 * HOUR_MS; // day 1 begins at 08:00
    const life = lifeOf(entry(1, air('30'), DAY_1_MS), entry(2, catalysed, halfPastNine));
    expect(life?.endMs).toBeCloseTo(halfPastNine + 4 * HOUR_MS, -3);
    expect(life?.coolEndMs).toBe(halfPastNine + 8 * HOUR_MS);
    expect(life?.as).toBe('pot');
  });

  test('a reading holds until the next one', () => {
    // 2 h at 30 C use 4 of 8 h; the other 4 follow at 20 C
    const life = lifeOf(
      entry(1, air('30'), DAY_1_MS),
      entry(2, catalysed, DAY_1_MS),
      entry(3, air('20'), DAY_1_MS + 2 * HOUR_MS),
    );
    expect(life?.endMs).toBeCloseTo(DAY_1_MS + 6 * HOUR_MS, -3);
  });

  test('a reading of half a day ago holds no longer: 20 C, where there is no forecast', () => {
    const life = lifeOf(entry(1, air('30'), DAY_1_MS - 20 * HOUR_MS), entry(2, catalysed, DAY_1_MS));
    expect(life?.endMs).toBeCloseTo(DAY_1_MS + 8 * HOUR_MS, -3);
  });

  test('a reading of half a day ago gives way to the mean of the forecast', () => {
    const forecast: EntryBody = {
      kind: 'forecast-set',
      dayTemperature: { text: '26', unit: 'C' },
      nightTemperature: { text: '14', unit: 'C' },
      dayFrom: '08:00',
      nightFrom: '20:00',
      movement: 'still',
    };
    const old = entry(1, air('40'), DAY_1_MS - 20 * HOUR_MS);
    // 26 and 14 °C are 20 °C in the mean: at it a life of 8 h is 8 h.
    const life = lifeOf(old, entry(2, catalysed, DAY_1_MS), entry(3, forecast, DAY_1_MS));
    expect(life?.endMs).toBeCloseTo(DAY_1_MS + 8 * HOUR_MS, -3);
  });

  test('is past from its very end on, until a smear at that end or later dries', () => {
    const endMs = DAY_1_MS + 8 * HOUR_MS;
    const tested: EntryBody = { kind: 'jar-tested', jar: JAR, test: 'glass-plate', result: 'passes' };
    const past = (nowMs: number, ...more: ReturnType<typeof entry>[]) => {
      const shop = fold([entry(1, air('20'), DAY_1_MS), entry(2, catalysed, DAY_1_MS), ...more]);
      return isPast(shop.jars.get(JAR) ?? expect.unreachable(), shop, nowMs);
    };
    expect([past(endMs - 1), past(endMs)]).toEqual([false, true]);
    expect(past(endMs + 1, entry(3, tested, endMs))).toBe(false);
    expect(past(endMs + 1, entry(3, tested, endMs - 1))).toBe(true);
  });

  const sheet = (hours: string, celsius: string, jar = JAR): EntryBody => ({
    kind: 'sheet-entered',
    jar,
    temperature: { text: celsius, unit: 'C' },
    humidity: { text: '50', unit: '%' },
    times: {},
    ...(hours === '' ? {} : { potLife: { text: hours, unit: 'h' } }),
  });
  const OLDER = id(0xb2);

  test.each([
    { by: 'the sheet, where both say', jar: catalysed, said: sheet('4', '20'), hours: 4 },
    { by: 'the sheet, where the jar says nothing', jar: fillJar(), said: sheet('4', '20'), hours: 4 },
    // twice as fast for 10 K (common practice): 4 h at 30 C are 8 h in a shop at 20 C
    { by: 'the sheet, at its own temperature', jar: catalysed, said: sheet('4', '30'), hours: 8 },
    { by: 'the jar, where the sheet is silent', jar: catalysed, said: sheet('', '20'), hours: 8 },
  ])('goes by $by', ({ jar, said, hours }) => {
    const life = lifeOf(entry(1, jar, DAY_1_MS), entry(2, said));
    expect(life?.endMs).toBeCloseTo(DAY_1_MS + hours * HOUR_MS, -3);
    expect(life?.as).toBe('pot');
  });

  test('goes by the sheet of an older jar of the same product, until it is struck', () => {
    const before = [
      entry(1, fillJar(OLDER), DAY_1_MS - HOUR_MS),
      entry(2, sheet('4', '20', OLDER), DAY_1_MS - HOUR_MS),
      entry(3, catalysed, DAY_1_MS),
    ];
    const typedLife = { text: '4', unit: 'h' };
    expect(lifeOf(...before)?.sheet?.potLife.typed).toEqual(typedLife);
    const struck = lifeOf(...before, entry(4, strike(id(2))));
    expect(struck?.sheet).toBeUndefined();
    expect(struck?.endMs).toBeCloseTo(DAY_1_MS + 8 * HOUR_MS, -3);
  });

  test('does not begin anew where pots are poured together', () => {
    const boxed = { ...catalysed, boxedFrom: [{ jar: OLDER, volume: { text: '50', unit: 'mL' } }] };
    const life = lifeOf(
      entry(1, fillJar(OLDER), DAY_1_MS - HOUR_MS),
      entry(2, boxed as EntryBody, DAY_1_MS),
      entry(3, sheet('24', '20')),
    );
    expect(life?.endMs).toBeCloseTo(DAY_1_MS + 8 * HOUR_MS, -3);
  });

  test('is not known where nobody has said it', () => {
    expect(lifeOf(entry(1, fillJar()))).toBeUndefined();
  });

  test('a cut mixed seven months ago is past its six months, until a smear on glass dries hard', () => {
    // 15 February is 196 days before 30 August, 6 months are 182.6 days.
    const nowMs = Date.UTC(2026, 7, 30, 9);
    const shellac = (mixedOn: string) =>
      ({
        ...fillJar(),
        product: { finish: 'shellac', volumeSolids: { text: '17.3', unit: '%' } },
        life: { span: { text: '6', unit: 'months' }, as: 'shelf' },
        mixedOn,
      }) as EntryBody;
    const tested = (result: 'passes' | 'fails'): EntryBody => ({
      kind: 'jar-tested',
      jar: JAR,
      test: 'glass-plate',
      result,
    });
    const past = (...entries: ReturnType<typeof entry>[]): boolean => {
      const shop = fold(entries);
      const jar = shop.jars.get(JAR);
      return jar !== undefined && isPast(jar, shop, nowMs);
    };
    const old = entry(1, shellac('2026-02-15'), nowMs - HOUR_MS);
    expect(past(old)).toBe(true);
    expect(past(entry(1, shellac('2026-03-15'), nowMs - HOUR_MS))).toBe(false);
    expect(past(old, entry(2, tested('passes'), nowMs))).toBe(false);
    expect(past(old, entry(2, tested('fails'), nowMs))).toBe(true);
    // One that was made while it was young says nothing of it now.
    expect(past(entry(1, shellac('2026-02-15'), DAY_1_MS), entry(2, tested('passes'), DAY_1_MS + 1))).toBe(
      true,
    );
  });
});
