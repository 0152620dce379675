import type { Shop } from '../../../logbook/fold/fold';
import type { Jar } from '../../../logbook/fold/mix/jars';

/** The jars with something in them, the one used or filled last first. */
export function jarsInUse({ jars, pieces }: Shop): readonly Jar[] {
  const usedMs = new Map<string, number>();
  for (const { coats } of pieces.values())
    for (const { jar, atMs } of coats) usedMs.set(jar, Math.max(usedMs.get(jar) ?? 0, atMs));
  const lastMs = ({ id, filledMs }: Jar): number => Math.max(filledMs, usedMs.get(id) ?? 0);
  return [...jars.values()]
    .filter(({ emptiedMs }) => emptiedMs === undefined)
    .sort((one, other) => lastMs(other) - lastMs(one));
}
