import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../src/logbook/entry';
import { fold } from '../../src/logbook/fold/fold';
import { jarLife } from '../../src/logbook/jar-life';
import { DAY_1_MS, entry, fillJar, JAR } from './entries';

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

  test('is not known where nobody has said it', () => {
    expect(lifeOf(entry(1, fillJar()))).toBeUndefined();
  });
});
