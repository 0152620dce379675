import { expect, test } from 'vitest';
import type { Estimate } from '../../../../src/estimator/estimate';
import type { EntryBody } from '../../../../src/logbook/entry';
import { inputsOf } from '../../../../src/screens/piece/why/inputs';
import { layCoat, PIECE, sand } from '../../../logbook/entries';
import { anOutlook, aShop } from '../../../parts/an-outlook';

const UM = 1e-6;

const inputs = (change: Record<string, unknown>, dryUm: number) => {
  const { piece, shop } = aShop(
    { hour: 1, body: layCoat() },
    {
      hour: 2,
      body: { kind: 'piece-changed', piece: PIECE, ...change } as EntryBody,
    },
  );
  const made = anOutlook();
  const estimate = {
    ...made.estimate,
    now: { ...made.estimate.now, dryM: dryUm * UM },
  } as unknown as Estimate;
  return new Map(inputsOf(piece, shop, estimate, 'metric').map((one) => [one.term, one]));
};

test('an old finish that is only assumed is told apart from what was logged', () => {
  const found = inputs({ base: 'old-redissolves' }, 72.5);
  expect(found.get('Coats')).toMatchObject({ text: expect.stringContaining('12.5 µm'), origin: 'log' });
  expect(found.get('Old finish that softens with it')).toMatchObject({
    text: expect.stringContaining('60 µm'),
    origin: 'practice',
  });
});

test('one whose thickness was entered is from the log', () => {
  const found = inputs({ base: 'old-redissolves', oldFilm: { text: '40', unit: 'um' } }, 52.5);
  expect(found.get('Coats')?.text).toContain('12.5 µm');
  expect(found.get('Old finish that softens with it')).toMatchObject({
    text: expect.stringContaining('40 µm'),
    origin: 'log',
  });
});

const airText = (
  ...air: readonly { readonly hour: number; readonly body: EntryBody }[]
): string | undefined => {
  const { piece, shop } = aShop({ hour: 5, body: layCoat() }, ...air);
  const { estimate } = anOutlook();
  const found = inputsOf(piece, shop, { ...estimate, now: { dryM: 0 } } as Estimate, 'metric');
  return found.find(({ term }) => term === 'Air')?.text;
};
const reading: EntryBody = {
  kind: 'air-read',
  temperature: { text: '20', unit: 'C' },
  humidity: { text: '50', unit: '%' },
  movement: 'gentle',
};
const forecast: EntryBody = {
  kind: 'forecast-set',
  dayTemperature: { text: '20', unit: 'C' },
  nightTemperature: { text: '12', unit: 'C' },
  dayFrom: '08:00',
  nightFrom: '20:00',
  movement: 'still',
};

test.each([
  { what: 'none', air: [], says: /^21 °C/ },
  { what: 'one before the first coat', air: [{ hour: 1, body: reading }], says: /^1 reading, then the last/ },
  { what: 'one after it', air: [{ hour: 9, body: reading }], says: /^1 reading,/ },
  {
    what: 'two before it, of which the last holds, and one after',
    air: [1, 2, 9].map((hour) => ({ hour, body: reading })),
    says: /^2 readings,/,
  },
  { what: 'the forecast alone', air: [{ hour: 1, body: forecast }], says: /^forecast: 20 °C by day/ },
])('of the air it counts what was read: $what', ({ air, says }) => {
  expect(airText(...air)).toMatch(says);
});

test('a coat that was sanded away is none of them', () => {
  const gone = { ...sand(), removed: { text: '90', unit: 'um' } } as EntryBody;
  const { piece, shop } = aShop(
    { hour: 1, body: layCoat() },
    { hour: 2, body: gone },
    { hour: 3, body: layCoat() },
  );
  const { estimate } = anOutlook();
  const found = inputsOf(piece, shop, { ...estimate, now: { dryM: 12.5 * UM } } as Estimate, 'metric');
  expect(found.find(({ term }) => term === 'Coats')?.text).toBe('1 coat, 12.5 µm dry');
});

test('over bare wood there is none', () => {
  expect(inputs({ base: 'bare-wood' }, 12.5).has('Old finish that softens with it')).toBe(false);
});

// Common practice, no source: a padded film rests 7 to 28 days; paper that powders comes before that.
test('a padded film says that it rests, and no longer once paper powders', () => {
  const padded = { hour: 5, body: { ...layCoat(), how: 'pad' } as EntryBody };
  const powders: EntryBody = { kind: 'checked', piece: PIECE, test: 'gum', result: 'passes' };
  const rests = (...work: readonly { readonly hour: number; readonly body: EntryBody }[]): boolean => {
    const { piece, shop } = aShop(...work);
    const { estimate } = anOutlook();
    const found = inputsOf(piece, shop, { ...estimate, now: { dryM: 0 } } as Estimate, 'metric');
    return found.some(({ text }) => text.startsWith('rests 7 to 28 days'));
  };
  expect(rests(padded)).toBe(true);
  expect(rests(padded, { hour: 30, body: powders })).toBe(false);
  expect(rests({ hour: 5, body: layCoat() })).toBe(false);
});
