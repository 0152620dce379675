import { test } from 'vitest';
import { EVAPORATION_SPREAD, PRIOR } from '../../src/estimator/belief';
import { heldBetween, heldTable, laidDryKg } from '../../src/estimator/card/held';
import { warmFor } from '../../src/estimator/card/warm-for';
import { weighCard } from '../../src/estimator/card/weigh-card';
import { DAY_S, stack } from '../estimator/stacks';
import { say } from './clock';

/** Cards each: `CARDS=100 npx vitest run --project bench tests/bench/card.bench.ts`. */
const CARDS = Number(process.env.CARDS ?? 20);
const AREA_M2 = 0.02;
const BARE_KG = 0.001;

let seed = 12_345;
const even = (): number => {
  seed = (seed * 1_664_525 + 1_013_904_223) >>> 0;
  return (seed + 0.5) / 2 ** 32;
};
const normal = (): number => Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even());

/** Cards whose constants, thickness, water and scale err as much as they are said to: factor of the band, and how often it held. */
function cards(
  coats: number,
  dryUm: number,
  days: readonly number[],
  divisionKg: number,
  warmDay?: number,
): string {
  const cold = { ...stack({ coats, dryUm }), panelEffusivity: 60 };
  const lastS = cold.events.at(-1)?.atS ?? 0;
  const warmS = lastS + (warmDay ?? 0) * DAY_S;
  const plan =
    warmDay === undefined ? cold : { ...cold, air: warmFor(cold.air, warmS - DAY_S, warmS, 330.15) };
  const atS = [...days, ...(warmDay === undefined ? [] : [warmDay])].map((day) => lastS + day * DAY_S);
  const onScale = (kg: number) => Math.round((kg + 0.5 * divisionKg * normal()) / divisionKg) * divisionKg;
  const looks = Array.from({ length: 30 }, (_, k) => lastS + 0.02 * 1.28 ** k * DAY_S);
  const factors: number[] = [];
  let held = 0;
  let spentMs = 0;
  for (let n = 0; n < CARDS; n++) {
    const thick = Math.max(0.5, 1 + 0.2 * normal());
    const lnD = Math.max(-1.8, Math.min(1.8, PRIOR.spread * normal()));
    const lnE = EVAPORATION_SPREAD * normal();
    const water = 0.03 * (1 + 0.3 * normal());
    const events = plan.events.map((event) =>
      event.kind === 'coat' ? { ...event, dryM: event.dryM * thick } : event,
    );
    // A heat mat is known to some 3 K.
    const offK = 2.5 * normal();
    const air = plan.air.map((span) =>
      span.temperatureK > 320 ? { ...span, temperatureK: span.temperatureK + offK } : span,
    );
    const history = { ...plan, events, air };
    const table = heldTable(history, AREA_M2, atS);
    const dryKg = laidDryKg({ history, areaM2: AREA_M2 });
    const weighings = atS.map((at, w) => {
      const isWarmDried = warmDay !== undefined && w === atS.length - 1;
      const humidity = 0.4 + 0.2 * even();
      const solventKg = heldBetween(table, w, lnD, lnE);
      const massKg = onScale(BARE_KG + dryKg * (1 + water * humidity) + solventKg);
      return { atS: at, humidity: humidity + 0.03 * normal(), isWarmDried, massKg };
    });
    const before = process.cpuUsage();
    const { diffusivity } = weighCard({
      history: plan,
      areaM2: AREA_M2,
      bareKg: onScale(BARE_KG),
      divisionKg,
      weighings,
      lookAtS: looks,
    });
    spentMs += process.cpuUsage(before).user / 1000;
    factors.push(Math.exp(1.2816 * diffusivity.spread));
    if (Math.abs(lnD - diffusivity.mean) < 1.2816 * diffusivity.spread) held++;
  }
  const middle = factors.sort((one, other) => one - other)[factors.length >> 1] as number;
  return `factor ${middle.toFixed(2)}, held ${held} of ${CARDS}, ${(spentMs / CARDS).toFixed(0)} ms each`;
}

test('what a card tells', () => {
  for (const divisionKg of [1e-6, 1e-5]) {
    const scale = `${divisionKg * 1000} g`;
    for (const [coats, dryUm] of [
      [3, 12],
      [3, 25],
      [6, 25],
      [1, 12],
    ] as const)
      say(
        `  ${coats} x ${dryUm} um at 6 h, 1, 2 d, dried warm, ${scale}: ${cards(coats, dryUm, [0.25, 1, 2], divisionKg, 6)}`,
      );
    say(
      `  3 x 25 um over 14 d, not dried warm, ${scale}: ${cards(3, 25, [0.25, 1, 2, 4, 7, 10, 14], divisionKg)}`,
    );
  }
  const twelve = [0.1, 0.25, 0.5, 1, 2, 3, 4, 5, 6, 8, 10, 14];
  say(`  twelve weighings, 0.001 g: ${cards(3, 25, twelve, 1e-6)}`);
}, 900_000);
