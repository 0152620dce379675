import { groupBy } from '../../group-by';
import type { EntryInSi, Lines } from '../in-si';

export type Override = EntryInSi<'hold-overridden'>;

/** The holds that were set aside in writing, by piece, in time order. */
export const foldOverrides = (lines: Lines) => ({
  overrides: groupBy(lines.of('hold-overridden'), ({ piece }) => piece) as ReadonlyMap<
    string,
    readonly Override[]
  >,
});
