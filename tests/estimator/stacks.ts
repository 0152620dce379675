import type { StackEvent, StackHistory } from '../../src/estimator/history';
import { binderOf } from '../../src/estimator/laws/binders';
import { filmSolvent } from '../../src/estimator/laws/film-solvents';
import type { Binder } from '../../src/estimator/laws/lacquer';
import { obstructionFactor } from '../../src/science/film/pigment-packing';
import type { SolventId } from '../../src/science/solvents/solvents';
import { toKelvin } from '../../src/units';

export const DAY_S = 86_400;
export const HOUR_S = 3600;

const THINNER: readonly (readonly [SolventId, number])[] = [
  ['acetone', 0.25],
  ['mek', 0.1],
  ['toluene', 0.3],
  ['isobutyl-acetate', 0.2],
  ['n-butyl-acetate', 0.1],
  ['2-butoxyethanol', 0.05],
];
export const NITROCELLULOSE = binderOf('nitrocellulose') as Binder;
export const SOLVENTS = THINNER.map(([id]) => filmSolvent(id));
const RETARDER = THINNER.length - 1;

/** Shares of the thinner by volume, with the retarder raised or left out and the rest made up. */
export const thinnerWith = (retarder: number): number[] =>
  THINNER.map(([, share], i) => (i === RETARDER ? retarder : (share * (1 - retarder)) / 0.95));

export interface StackCase {
  readonly coats?: number;
  readonly dryUm?: number;
  readonly perDay?: number;
  readonly gapH?: number;
  readonly volumeSolids?: number;
  readonly retarder?: number;
  readonly pigment?: number;
  readonly airC?: number;
  readonly sandingC?: number;
  readonly transferMS?: number;
  readonly diffusivity?: number;
  readonly sanded?: readonly { readonly atS: number; readonly removedM: number }[];
}

/** A stack sprayed so many coats a day, by default in the conditions of the reference table. */
export function stack(given: StackCase = {}): StackHistory {
  const {
    coats = 9,
    dryUm = 12,
    perDay = 3,
    gapH = 2,
    volumeSolids = 0.15,
    retarder = 0.05,
    pigment = 0,
  } = given;
  const wet = (1 - volumeSolids) / volumeSolids / (1 - pigment);
  const laid: StackEvent[] = Array.from({ length: coats }, (_, k) => ({
    kind: 'coat',
    atS: Math.floor(k / perDay) * DAY_S + (k % perDay) * gapH * HOUR_S,
    dryM: dryUm * 1e-6,
    wetness: thinnerWith(retarder).map((share) => share * wet),
    pigment,
    passage: obstructionFactor(pigment),
  }));
  const sanded: StackEvent[] = (given.sanded ?? []).map((row) => ({ kind: 'sand', ...row }));
  return {
    binder: {
      ...NITROCELLULOSE,
      glassDiffusivityM2S: NITROCELLULOSE.glassDiffusivityM2S * (given.diffusivity ?? 1),
    },
    solvents: SOLVENTS,
    events: [...laid, ...sanded].sort((a, b) => a.atS - b.atS),
    air: [{ fromS: 0, temperatureK: toKelvin(given.airC ?? 21), transferMS: given.transferMS ?? 1.2e-3 }],
    openBaseM: 0,
    sandingK: toKelvin(given.sandingC ?? 21),
    panelEffusivity: 370,
  };
}
