import { CrossSection } from '../../parts/film/cross-section';
import { BENCH_EMPTY } from '../../words/bench';

const SOLVENT_UM = [1, 2, 4, 22];

const EXAMPLE = {
  describe: BENCH_EMPTY.picture,
  woodLabel: BENCH_EMPTY.wood,
  layers: SOLVENT_UM.map((solventUm, index) => ({
    key: String(index),
    label: BENCH_EMPTY.coat(index + 1),
    dryUm: 12,
    solventUm,
  })),
};

/** The picture that explains an empty bench. */
export const Example = () => <CrossSection {...EXAMPLE} />;
