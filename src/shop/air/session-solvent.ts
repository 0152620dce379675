import type { Room } from '../../logbook/fold/shop/shop-air';
import { type Solvent, solvent } from '../../science/solvents/solvents';
import { clearanceTimeS } from '../../science/ventilation/clearance';
import { airForFireM3, blendLelFraction } from '../../science/ventilation/explosive-limit';
import { airForHealthM3 } from '../../science/ventilation/exposure';
import { REFERENCE_AIR, type RoomAir, vapourVolumeM3 } from '../../science/ventilation/vapour';
import { type JarMix, jarFilm } from '../jar/film';

/** What a planned session gives to the room, and the clean air that this asks for; an indication. */
export interface SessionSolvent {
  readonly parts: readonly { readonly name: string; readonly massKg: number }[];
  readonly massKg: number;
  /** Lower explosive limit of the vapours together, a volume fraction; undefined where none is known. */
  readonly lelFraction: number | undefined;
  /** Clean air to stay under a quarter of it, m3. */
  readonly fireAirM3: number | undefined;
  /** Clean air to dilute the vapours to their limits as a mixture, m3. */
  readonly healthAirM3: number;
  /** Share of the explosive limit if all of it stayed in the closed room, evenly mixed. */
  readonly closedRoomShare: number | undefined;
  /** Solvents left out, for want of a figure. */
  readonly withoutLel: readonly string[];
  readonly withoutLimit: readonly string[];
}

interface Released {
  readonly solvent: Solvent;
  readonly massKg: number;
}

/**
 * The solvent that a volume of the mix gives to the air: all of it counts, on the piece or past it.
 * @param mixM3 volume of the mix that is to be sprayed
 * @param pressurePa of the air: the same mass of vapour takes more room in thin air
 */
export function sessionSolvent(jar: JarMix, mixM3: number, room: Room, pressurePa: number): SessionSolvent {
  const air: RoomAir = { ...REFERENCE_AIR, pressurePa };
  const released = releasedBy(jar, mixM3);
  const burning = released.flatMap(({ solvent: one, massKg }) => {
    const lelFraction = room.explosiveLimit?.si ?? one.lelFraction;
    return lelFraction === undefined ? [] : [{ massKg, molarMassKgMol: one.molarMassKgMol, lelFraction }];
  });
  const limited = released.flatMap(({ solvent: one, massKg }) => {
    const limitPpm = strictestPpm(one);
    return limitPpm === undefined ? [] : [{ massKg, molarMassKgMol: one.molarMassKgMol, limitPpm }];
  });
  const lelFraction = burning.length > 0 ? blendLelFraction(burning) : undefined;
  const vapourM3 = burning.reduce((sum, vapour) => sum + vapourVolumeM3(vapour, air), 0);
  return {
    parts: released.map(({ solvent: one, massKg }) => ({ name: one.name, massKg })),
    massKg: released.reduce((sum, { massKg }) => sum + massKg, 0),
    lelFraction,
    fireAirM3: lelFraction === undefined ? undefined : airForFireM3(burning, air),
    healthAirM3: airForHealthM3(limited, room.mixing.si, air),
    closedRoomShare: lelFraction === undefined ? undefined : vapourM3 / room.volume.si / lelFraction,
    withoutLel: namesWithout(released, (one) => room.explosiveLimit?.si ?? one.lelFraction),
    withoutLimit: namesWithout(released, strictestPpm),
  };
}

/** Water is no solvent here. */
function releasedBy(jar: JarMix, mixM3: number): readonly Released[] {
  const { solvents, volumeSolids } = jarFilm(jar);
  return solvents
    .filter(({ id }) => id !== 'water')
    .map(({ id, share }) => {
      const one = solvent(id);
      return { solvent: one, massKg: mixM3 * (1 - volumeSolids) * share * one.densityKgM3 };
    });
}

/** The lower of the limits that are known, ppm. */
function strictestPpm({ oshaTwaPpm, nioshTwaPpm }: Solvent): number | undefined {
  const known = [oshaTwaPpm, nioshTwaPpm].filter((limit) => limit !== undefined);
  return known.length > 0 ? Math.min(...known) : undefined;
}

const namesWithout = (
  released: readonly Released[],
  figure: (one: Solvent) => number | undefined,
): string[] =>
  released.filter(({ solvent: one }) => figure(one) === undefined).map(({ solvent: one }) => one.name);

/** The flow, m3/s, that brings so much air within so many seconds. */
export const flowFor = (airM3: number, withinS: number): number => airM3 / withinS;

/** What is left of the vapour when the room counts as cleared: a hundredth of what it was, the 99 % of CDC, MMWR 43 (RR-13) 1994, table S3-1. */
const CLEARED = 0.01;

/** When the vapour of a session has fallen to a hundredth, ms since 1970; an indication. */
export function clearedMs({ volume, airFlow, mixing }: Room, endedMs: number): number {
  const room = { volumeM3: volume.si, airFlowM3S: airFlow.si, mixingFactor: mixing.si };
  return endedMs + clearanceTimeS(room, CLEARED) * 1000;
}
