import { verdictFor } from '../../../actions/verdicts/verdict-for';
import { readTyped } from '../../../logbook/as-typed';
import type { Sanding } from '../../../logbook/fold/piece/pieces';
import { LIMITS } from '../../../logbook/limits';
import type { Draft } from '../../../parts/fields/typed-field';
import { SANDING_ACTS, stageOf } from '../../../verdicts/sanding';
import type { Standing } from '../../../verdicts/standing';
import type { Verdict } from '../../../verdicts/verdict';
import { usualRemoval } from './usual-removal';

/** The stage that is ready, or comes next; a scuff where no sanding does. */
export const stageNext = (standing: Standing | undefined): Sanding['stage'] =>
  stageOf(standing?.verdict?.act ?? 'scuff') ?? 'scuff';

/** A sanding as it is being said. */
export interface SandingSaid {
  /** The piece, or the place on it. */
  readonly standId: string;
  readonly stage: Sanding['stage'];
  readonly removed: Draft<'um' | 'mil'>;
}

/** Whether nobody has changed what is usual. */
export const isUsualRemoval = ({ stage, removed }: Omit<SandingSaid, 'standId'>): boolean =>
  removed.text === usualRemoval(stage, removed.unit).text;

/** What the judge says of a sanding as it is being said; what is usual is no measure. */
export function verdictOnSanding(
  open: Parameters<typeof verdictFor>[0],
  { standId, stage, removed }: SandingSaid,
): Verdict | undefined {
  const read = readTyped(removed, LIMITS.removed);
  const isMeasured = !isUsualRemoval({ stage, removed }) && read.ok;
  return verdictFor(open, standId, {
    act: SANDING_ACTS[stage],
    ...(isMeasured && { removedM: read.value }),
  });
}
