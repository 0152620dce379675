import { DAY_S } from '../../units';
import type { Profile } from '../profile';
import { growing, TOLD } from '../read-off';
import type { FinishLaw, Spread } from './finish-law';
import type { LawHistory } from './law-history';
import { type Progress, progress, valueAt } from './progress';
import type { Thresholds } from './thresholds';

/** Volatiles fall to a twentieth by the time a film is dry to touch (judgement, no source). */
const DRY_AT_TOUCH = 3;

/** Share of its volatiles that a coat still holds. */
export const leftAt = (wanted: Thresholds, dried: number): number =>
  Math.exp((-DRY_AT_TOUCH * dried) / (wanted.touch as Spread).typical);

/** What is in each layer just after every coat, on a growing scale after the last, and now. */
export function layersOverTime(
  law: FinishLaw,
  history: LawHistory,
  wanted: Thresholds,
  nowS: number,
): readonly Profile[] {
  const runs = history.coats.map((coat) =>
    progress(
      law,
      history.air,
      coat.atS,
      { drying: Math.max(0.25, coat.dryM / law.usualDryM), cure: 1 },
      3 * DAY_S,
    ),
  );
  const lastS = history.coats.at(-1)?.atS ?? 0;
  const after = growing(60, 20 * DAY_S, TOLD.ofLayers).map((s) => lastS + s);
  const times = [...history.coats.map(({ atS }) => atS + 1), ...after, ...(nowS > 0 ? [nowS] : [])].sort(
    (one, other) => one - other,
  );
  return times.map((timeS) => ({ timeS, layers: layersAt(history, wanted, runs, timeS) }));
}

/** The coats laid by a moment, thinner by what was sanded away from the top. */
function layersAt(
  { coats, sandings }: LawHistory,
  wanted: Thresholds,
  runs: readonly Progress[],
  timeS: number,
) {
  const layers = coats.map(({ atS, dryM, volatileM }, i) => {
    const run = runs[i] as Progress;
    return { atS, dryM, solventM: volatileM * leftAt(wanted, valueAt(run, run.dried, timeS)) };
  });
  for (const { atS, removedM } of sandings.filter((sanding) => sanding.atS <= timeS))
    takeOff(
      layers.filter((layer) => layer.atS <= atS),
      removedM,
    );
  return layers.filter((layer) => layer.atS <= timeS).map(({ dryM, solventM }) => ({ dryM, solventM }));
}

function takeOff(layers: { dryM: number; solventM: number }[], removedM: number): void {
  let left = removedM;
  for (const layer of layers.toReversed()) {
    const taken = Math.min(left, layer.dryM);
    layer.solventM *= layer.dryM > 0 ? 1 - taken / layer.dryM : 0;
    layer.dryM -= taken;
    left -= taken;
  }
}
