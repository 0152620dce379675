import { TENTH } from '../../estimator/belief';
import { plainNumber } from '../../logbook/typed';
import { counted, type TestCard } from './cards';
import type { TimedReading } from './next-weighing';

/** What is odd about a weight, so that it is asked about before it is believed. */
export type OddWeight =
  | { readonly kind: 'milligrams'; readonly grams: string }
  /** Lighter than the bare foil with its dry film. */
  | { readonly kind: 'below' }
  /** Heavier than it can be: dust, or damp. */
  | { readonly kind: 'up' }
  /** Lighter than solvent alone makes it: torn, or a flake lost. */
  | { readonly kind: 'down' }
  /** Typed in other steps than those of the card's scale. */
  | { readonly kind: 'scale'; readonly division: string };

/** So many spreads off what is expected, one weighing in some fifteen thousand is asked about for nothing. */
const FAR = 4;
/** Beyond any thickness and any wetness of what was laid (judgement, no source). */
const MOST_TIMES = 40;
const MG_PER_G = 1000;
/** No film is laid at less than this share of what was said (judgement, no source). */
const LEAST_DRY = 0.3;

/** What is odd about a weight as typed; undefined where nothing is. */
export function oddWeight(
  card: TestCard,
  told: TimedReading | undefined,
  { text, massKg, atMs }: { readonly text: string; readonly massKg: number; readonly atMs: number },
): OddWeight | undefined {
  const most = card.bareKg * MOST_TIMES;
  if (massKg > most && massKg / MG_PER_G >= card.bareKg / 2 && massKg / MG_PER_G <= most)
    return { kind: 'milligrams', grams: String(Number(((plainNumber(text) ?? 0) / MG_PER_G).toFixed(6))) };
  if (massKg <= card.bareKg + LEAST_DRY * (told?.reading.dryKg.mean ?? 0)) return { kind: 'below' };
  const far = told && farOff(card, told, massKg, atMs);
  if (far) return far;
  const division = stepOf(text);
  const steps = new Set([card.divisionKg, ...counted(card).flatMap((one) => one.division?.si ?? [])]);
  const isKnown = [...steps].some((one) => Math.abs(one * 1000 - Number(division)) < 1e-9);
  return isKnown ? undefined : { kind: 'scale', division };
}

function farOff(card: TestCard, { reading, startMs }: TimedReading, massKg: number, atMs: number) {
  const atS = (atMs - startMs) / 1000;
  const after = reading.expected.find((one) => one.atS >= atS);
  const before = reading.expected.findLast((one) => one.atS <= atS) ?? after;
  if (!before || !after) return undefined;
  const spread = Math.max(before.highKg - before.lowKg, after.highKg - after.lowKg) / 2 / TENTH;
  const lastKg = counted(card).at(-1)?.mass.si ?? Number.POSITIVE_INFINITY;
  const isSinceCoat = (counted(card).at(-1)?.atMs ?? 0) > (card.coats.at(-1)?.atMs ?? 0);
  const damp = FAR * Math.max(card.divisionKg, 0.01 * reading.dryKg.mean);
  if (massKg > before.likelyKg + FAR * spread || (isSinceCoat && massKg > lastKg + damp))
    return { kind: 'up' } as const;
  return massKg < after.likelyKg - FAR * spread ? ({ kind: 'down' } as const) : undefined;
}

/** The step of a number as typed: 1.73 goes by 0.01. */
export function stepOf(text: string): string {
  const decimals = /[.,](\d*)$/.exec(text.trim())?.[1]?.length ?? 0;
  return decimals === 0 ? '1' : (10 ** -decimals).toFixed(decimals);
}
