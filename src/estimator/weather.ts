import { DAY_S } from '../units';
import { MOST_NODES } from './film';
import type { AirSpan } from './history';
import type { AirState, MobilityLaw } from './laws/law';
import { USUAL_SHOP } from './usual-shop';

/** A temperature, and the share of a stretch of time during which it held. */
export interface Spell {
  readonly temperatureK: number;
  readonly share: number;
}

/** The air over a stretch of time. */
export interface Stretch extends AirState {
  readonly endS: number;
  readonly spells: readonly Spell[];
}

/** Until the first air is known. */
const AIR_BEFORE_ANY: AirSpan = { fromS: 0, ...USUAL_SHOP };

/**
 * Reads the air of a history forwards. A stretch ends where the air changes; only steps that span whole days look past that
 * and take the days and nights between as spells, so that a year of nights does not cost a step each.
 */
export function createWeather(air: readonly AirSpan[]): (fromS: number, wishS: number) => Stretch {
  let k = 0;
  return (fromS, wishS) => {
    while (k + 1 < air.length && (air[k + 1]?.fromS ?? 0) <= fromS) k++;
    const span = air[k] ?? AIR_BEFORE_ANY;
    const endS = air[k + 1]?.fromS ?? Number.POSITIVE_INFINITY;
    if (wishS < DAY_S || endS >= fromS + wishS) return { ...span, endS, spells: [] };
    const days = Math.floor(wishS / DAY_S) * DAY_S;
    return stretchOf(air, k, fromS, fromS + days);
  };
}

function stretchOf(air: readonly AirSpan[], first: number, fromS: number, endS: number): Stretch {
  const seconds = new Map<number, number>();
  let degrees = 0;
  let transfer = 0;
  for (let k = first; k < air.length; k++) {
    const span = air[k] as AirSpan;
    if (span.fromS >= endS) break;
    const held = Math.min(endS, air[k + 1]?.fromS ?? endS) - Math.max(fromS, span.fromS);
    const temperatureK = Math.round(span.temperatureK * 2) / 2;
    seconds.set(temperatureK, (seconds.get(temperatureK) ?? 0) + held);
    degrees += held * span.temperatureK;
    transfer += held * span.transferMS;
  }
  const whole = endS - fromS;
  return {
    temperatureK: degrees / whole,
    transferMS: transfer / whole,
    endS,
    spells: [...seconds].map(([temperatureK, held]) => ({ temperatureK, share: held / whole })),
  };
}

/** A mobility law that takes the mean over the spells it was last told of; over none, the law itself. */
export interface SpelledLaw extends MobilityLaw {
  spells: readonly Spell[];
}

/** Lets a law be averaged over days and nights: what moves through a film in a long step is the mean of its mobilities. */
export function overSpells(law: MobilityLaw): SpelledLaw {
  const part = new Float64Array(MOST_NODES);
  const spelled: SpelledLaw = {
    spells: [],
    ...(law.ratio ? { ratio: law.ratio } : {}),
    at(film, node, temperatureK, solvent) {
      if (spelled.spells.length === 0) return law.at(film, node, temperatureK, solvent);
      return spelled.spells.reduce(
        (sum, spell) => sum + spell.share * law.at(film, node, spell.temperatureK, solvent),
        0,
      );
    },
    fill(film, temperatureK, mobility) {
      const fill = law.fill;
      if (!fill) throw new TypeError('Only a law that fills can be averaged.');
      if (spelled.spells.length === 0) {
        fill(film, temperatureK, mobility);
        return;
      }
      mobility.fill(0, 0, film.nodes);
      for (const { temperatureK: spellK, share } of spelled.spells) {
        fill(film, spellK, part);
        for (let n = 0; n < film.nodes; n++)
          mobility[n] = (mobility[n] as number) + share * (part[n] as number);
      }
    },
  };
  return spelled;
}
