import type { Pen } from './pen';
import { celsius, percent } from './said';

/** Days ago on which somebody was in the shop and read the air, with what was read: C and % RH. */
const READ: readonly (readonly [daysAgo: number, temperatureC: number, humidity: number])[] = [
  [13, 21, 46],
  [12, 21, 48],
  [11, 20.5, 51],
  [10, 21.5, 47],
  [6, 21, 44],
  [5, 20, 49],
  [4, 20.5, 50],
  [3, 21, 52],
  [2, 21.5, 48],
  [1, 21, 45],
];

/** The air of the demo: 21 C by day and 16 C by night, read on the days of work; ids of the readings by days ago. */
export function readDemoAir(pen: Pen): ReadonlyMap<number, string> {
  pen.write(
    {
      kind: 'forecast-set',
      dayTemperature: celsius(21),
      nightTemperature: celsius(16),
      dayFrom: '07:30',
      nightFrom: '19:00',
      movement: 'gentle',
    },
    pen.daysAgo(14, 8),
  );
  const read = (temperatureC: number, humidity: number, atMs: number) =>
    pen.write(
      {
        kind: 'air-read',
        temperature: celsius(temperatureC),
        humidity: percent(humidity),
        movement: 'gentle',
      },
      atMs,
    );
  const ids = new Map(READ.map(([days, c, rh]) => [days, read(c, rh, pen.daysAgo(days, 8, 45))]));
  return ids.set(0, read(21, 47, pen.minutesAgo(50)));
}
