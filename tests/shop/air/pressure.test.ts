import { expect, test } from 'vitest';
import { fold } from '../../../src/logbook/fold/fold';
import { shopPressurePa } from '../../../src/shop/air/pressure';
import { entry } from '../../logbook/entries';

// ASHRAE Handbook Fundamentals 2017, ch. 1, table 1; 1 ft is 0.3048 m.
test.each([
  { altitude: undefined, pa: 101_325 },
  { altitude: { text: '1000', unit: 'm' } as const, pa: 89_875 },
  { altitude: { text: '3280.84', unit: 'ft' } as const, pa: 89_875 },
  { altitude: { text: '-420', unit: 'm' } as const, pa: 106_473 }, // by hand: 101325 (1 + 2.25577e-5 x 420)^5.2559
])('the air of a shop at $altitude.text $altitude.unit presses with $pa Pa', ({ altitude, pa }) => {
  const { settings } = fold(altitude ? [entry(1, { kind: 'settings-changed', patch: { altitude } })] : []);
  expect(Math.abs(shopPressurePa(settings) - pa)).toBeLessThan(1);
});
