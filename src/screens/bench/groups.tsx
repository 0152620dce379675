import { useSignal } from '@preact/signals';
import type { Piece } from '../../logbook/fold/pieces';
import { filmLayers } from '../../parts/film/piece-film';
import { Section } from '../../parts/frame/page';
import { useShop } from '../../parts/frame/shop-context';
import type { Group, Standing } from '../../verdicts/standing';
import { BENCH_WORDS } from '../../words/bench';
import { PieceRow } from './piece-row';

const OPEN_GROUPS = ['held', 'now', 'next', 'later'] as const;

/** A piece with where it stands; undefined until the judge has come. */
export interface OnBench {
  readonly piece: Piece;
  readonly standing: Standing | undefined;
}

/** The pieces, in groups by what comes first; finished ones folded away. */
export function Groups({ pieces }: { readonly pieces: readonly OnBench[] }) {
  const open = pieces.filter(({ piece }) => piece.closedMs === undefined).sort(byWhatComesFirst);
  const closed = pieces.filter(({ piece }) => piece.closedMs !== undefined).sort(byWhatComesFirst);
  return (
    <div class="bench-groups">
      {OPEN_GROUPS.map((group) => {
        const some = open.filter((one) => groupOf(one) === group);
        return (
          some.length > 0 && (
            <Section key={group} title={BENCH_WORDS.groups[group]}>
              <Rows pieces={some} beside={open} />
            </Section>
          )
        );
      })}
      {closed.length > 0 && <Closed pieces={closed} />}
    </div>
  );
}

const groupOf = ({ standing }: OnBench): Group => standing?.group ?? 'later';

const byWhatComesFirst = (one: OnBench, other: OnBench): number => sortMs(one) - sortMs(other) || 0;
const sortMs = ({ piece, standing }: OnBench): number =>
  piece.closedMs === undefined ? (standing?.sortMs ?? Number.MAX_VALUE) : -piece.closedMs;

/** Ten years of closed pieces are drawn only when they are asked for. */
function Closed({ pieces }: { readonly pieces: readonly OnBench[] }) {
  const isOpen = useSignal(false);
  return (
    <details
      class="folded"
      onToggle={(event) => {
        isOpen.value = event.currentTarget.open;
      }}
    >
      <summary>
        {BENCH_WORDS.groups.closed} ({pieces.length})
      </summary>
      {isOpen.value && <Rows pieces={pieces} beside={pieces} />}
    </details>
  );
}

interface RowsProps {
  readonly pieces: readonly OnBench[];
  /** The pieces whose faces share one scale with them. */
  readonly beside: readonly OnBench[];
}

function Rows({ pieces, beside }: RowsProps) {
  const scaleUmMax = useThickestUm(beside);
  return (
    <ul class="rows">
      {pieces.map(({ piece, standing }) => (
        <PieceRow key={piece.id} {...{ piece, standing, scaleUmMax }} />
      ))}
    </ul>
  );
}

/** The thickest film of some pieces, so that all faces share one scale. */
function useThickestUm(some: readonly OnBench[]): number {
  const { shop, outlooks, nowMs } = useShop();
  const thicknesses = some.map(({ piece }) =>
    filmLayers(piece, outlooks.value.get(piece.id), shop.value.jars, nowMs.value).reduce(
      (sum, { dryUm, solventUm }) => sum + dryUm + solventUm,
      0,
    ),
  );
  return Math.max(0, ...thicknesses);
}
