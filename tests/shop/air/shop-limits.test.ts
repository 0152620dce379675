import { expect, test } from 'vitest';
import { shopLimits } from '../../../src/shop/air/shop-limits';
import { toKelvin } from '../../../src/units';

const night = (C: number) => ({ nightTemperature: { si: toKelvin(C) } }) as never;

// Waterborne: not below 18 C nor above 70 % humidity (common practice, no source); 66 F is 18.9 C, 59 F is 15 C.
test.each([
  { finish: 'waterborne', airC: 18.9, humidity: 0.58, nightC: 15, cold: false, damp: false, coldNight: true },
  { finish: 'waterborne', airC: 17.9, humidity: 0.5, nightC: 19, cold: true, damp: false, coldNight: false },
  { finish: 'waterborne', airC: 20, humidity: 0.71, nightC: 18, cold: false, damp: true, coldNight: false },
  { finish: 'precatalysed', airC: 20, humidity: 0.9, nightC: 17, cold: false, damp: false, coldNight: true },
])('$finish at $airC C and $humidity, night $nightC C', (row) => {
  const limits = shopLimits(row.finish, row, night(row.nightC));
  expect(limits).toMatchObject({ isCold: row.cold, isDamp: row.damp });
  expect(limits?.coldNightK !== undefined).toBe(row.coldNight);
});

test.each(['nitrocellulose', 'shellac'])('%s has no such limits', (finish) =>
  expect(shopLimits(finish, { airC: 5, humidity: 0.9 }, undefined)).toBeUndefined(),
);
