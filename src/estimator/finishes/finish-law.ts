import { DAY_S, HOUR_S, MINUTE_S, toKelvin, umToMetres } from '../../units';

/** The finishes that do not harden by solvent loss alone. */
export type CuringFinish = 'waterborne' | 'precatalysed' | 'conversion' | 'urethane';

/** A time with its band: one in ten sooner than `low`, one in ten later than `high`; s. */
export interface Spread {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

/** How one kind of finish dries and cures. Times are those at the reference of {@link USUAL_SHOP}. */
export interface FinishLaw {
  /** What leaves while it dries. */
  readonly dries: 'by-water' | 'by-solvent';
  readonly touch: Spread;
  readonly recoat: Spread;
  /** Upper end of the recoat window: later it is scuffed first. */
  readonly recoatUntil?: Spread;
  readonly level: Spread;
  readonly rubOut: Spread;
  /** Used with care. */
  readonly lightUse: Spread;
  readonly settled: Spread;
  /** Film for which these times hold: one coat, and all coats, m. */
  readonly usualDryM: number;
  readonly usualTotalM: number;
  /** Power of the total film with which hardening slows. */
  readonly buildPower: number;
  readonly activationJMol: number;
  /** Rate of the cure at the reference before it vitrifies, 1/s. */
  readonly rateS: number;
  /** Glass transition of the film before and after the cure, K. */
  readonly startTgK: number;
  readonly endTgK: number;
  readonly vitrifies: boolean;
  /** Below it no film forms, K. */
  readonly formsFilmFromK?: number;
  /** What is asked of the shop. */
  readonly shop: { readonly lowestK: number; readonly highestHumidity?: number };
  readonly potLifeS?: Spread;
  /** All coats together at most, m. */
  readonly totalLimitM?: number;
}

const minutes = (low: number, typical: number, high: number): Spread => spread(MINUTE_S, low, typical, high);
const hours = (low: number, typical: number, high: number): Spread => spread(HOUR_S, low, typical, high);
const days = (low: number, typical: number, high: number): Spread => spread(DAY_S, low, typical, high);
const spread = (unitS: number, low: number, typical: number, high: number): Spread => ({
  low: low * unitS,
  typical: typical * unitS,
  high: high * unitS,
});

/**
 * The laws. Times: common practice, no source, unless a line says otherwise; the product's data sheet outranks them.
 * Activation energies: tin-catalysed urethanes were measured at 29 to 36 kJ/mol from 15 to 45 °C; without tin about 50, which
 * doubles the rate for 10 K as practice has it (judgement). Acid-cured amino resins about 60 (from memory).
 * Glass transitions: from memory, typical of the kind.
 */
export const FINISH_LAWS: { readonly [F in CuringFinish]: FinishLaw } = {
  waterborne: {
    dries: 'by-water',
    touch: minutes(15, 30, 60),
    recoat: minutes(60, 90, 120),
    level: days(4, 7, 12),
    rubOut: days(7, 12, 21),
    lightUse: days(3, 5, 7),
    settled: days(7, 14, 21),
    usualDryM: umToMetres(25),
    usualTotalM: umToMetres(100),
    buildPower: 0.5,
    activationJMol: 50_000,
    rateS: 1 / (6 * DAY_S),
    startTgK: 278,
    endTgK: 315,
    vitrifies: false,
    formsFilmFromK: toKelvin(10), // of the usual coalesced dispersions 5 to 15 (from memory)
    shop: { lowestK: toKelvin(18), highestHumidity: 0.7 }, // common practice, no source
  },
  precatalysed: {
    dries: 'by-solvent',
    touch: minutes(8, 12, 20),
    recoat: minutes(45, 52, 60),
    recoatUntil: hours(12, 24, 48),
    level: days(3, 5, 8),
    rubOut: days(5, 7, 10),
    lightUse: days(2, 3, 5),
    settled: days(14, 21, 30),
    usualDryM: umToMetres(20),
    usualTotalM: umToMetres(75),
    buildPower: 0.5,
    activationJMol: 60_000,
    rateS: 1 / (5 * DAY_S),
    startTgK: 285,
    endTgK: 330,
    vitrifies: true,
    shop: { lowestK: toKelvin(18) },
    totalLimitM: umToMetres(100),
  },
  conversion: {
    dries: 'by-solvent',
    touch: minutes(15, 20, 30),
    recoat: hours(2, 3, 4),
    recoatUntil: hours(12, 24, 48),
    level: days(1, 2, 4),
    rubOut: days(3, 5, 10),
    lightUse: days(2, 3, 5),
    settled: days(14, 21, 30),
    usualDryM: umToMetres(25),
    usualTotalM: umToMetres(75),
    buildPower: 0,
    activationJMol: 60_000,
    rateS: 1 / (16 * HOUR_S),
    startTgK: 262,
    endTgK: 338,
    vitrifies: true,
    shop: { lowestK: toKelvin(15.5) }, // trade pages, read: not below 60 °F
    potLifeS: hours(6, 8, 8),
    totalLimitM: umToMetres(100),
  },
  urethane: {
    dries: 'by-solvent',
    touch: minutes(20, 40, 90),
    recoat: hours(2, 4, 6),
    recoatUntil: hours(16, 24, 36),
    level: hours(16, 24, 48),
    rubOut: days(3, 5, 10),
    lightUse: days(1, 2, 3),
    settled: days(7, 10, 14),
    usualDryM: umToMetres(35),
    usualTotalM: umToMetres(100),
    buildPower: 0,
    activationJMol: 50_000,
    rateS: 0.15 / HOUR_S,
    startTgK: 250,
    endTgK: 335,
    vitrifies: true,
    shop: { lowestK: toKelvin(15) },
    potLifeS: hours(2, 4, 8),
  },
};

/** Whether a finish hardens by one of these laws rather than by solvent loss alone. */
export const isCuring = (finish: string): finish is CuringFinish => Object.hasOwn(FINISH_LAWS, finish);
