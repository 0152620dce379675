import type { StackEvent, StackHistory } from '../../estimator/history';

/** What is asked beside the history as it is. */
const WHAT_IFS = ['warmer', 'cooler', 'thinner-coats', 'no-retarder'] as const;
export type WhatIf = (typeof WHAT_IFS)[number];
/** So much warmer or cooler, K, and a coat laid at this share of its thickness. */
export const WHAT_IF = { byK: 5, share: 2 / 3 } as const;

/** The history in a shop so many kelvin warmer from a moment on; the sanding room stays as it is. */
export function warmerFrom(history: StackHistory, fromS: number, byK: number): StackHistory {
  const air = history.air.flatMap((span, index) => {
    const endS = history.air[index + 1]?.fromS ?? Number.POSITIVE_INFINITY;
    const warmer = { ...span, fromS: Math.max(span.fromS, fromS), temperatureK: span.temperatureK + byK };
    if (endS <= fromS) return [span];
    return span.fromS < fromS ? [span, warmer] : [warmer];
  });
  return { ...history, air };
}

/** The history with its last coat laid thinner, by a share of its thickness. */
export function thinnerLast(history: StackHistory, share: number): StackHistory {
  const last = history.events.findLastIndex(({ kind }) => kind === 'coat');
  const thin = (event: StackEvent, index: number): StackEvent =>
    index === last && event.kind === 'coat' ? { ...event, dryM: event.dryM * share } : event;
  return { ...history, events: history.events.map(thin) };
}
