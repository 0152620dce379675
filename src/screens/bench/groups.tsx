import { useSignal } from '@preact/signals';
import { filmLayers } from '../../parts/film/piece-film';
import { Section } from '../../parts/frame/page';
import { useShop } from '../../parts/frame/shop-context';
import type { Group, Standing } from '../../parts/time/standing';
import { BENCH_WORDS } from '../../words/bench';
import { PieceRow } from './piece-row';

const OPEN_GROUPS: readonly Group[] = ['now', 'next', 'later'];

/** The pieces, in groups by what may be touched first; closed ones folded away. */
export function Groups({ standings }: { readonly standings: readonly Standing[] }) {
  const open = standings.filter(({ group }) => group !== 'closed');
  const closed = standings.filter(({ group }) => group === 'closed');
  return (
    <div class="bench-groups">
      {OPEN_GROUPS.map((group) => {
        const some = open.filter((standing) => standing.group === group);
        return (
          some.length > 0 && (
            <Section key={group} title={BENCH_WORDS.groups[group]}>
              <Rows standings={some} beside={open} />
            </Section>
          )
        );
      })}
      {closed.length > 0 && <Closed standings={closed} />}
    </div>
  );
}

/** Ten years of closed pieces are drawn only when they are asked for. */
function Closed({ standings }: { readonly standings: readonly Standing[] }) {
  const isOpen = useSignal(false);
  return (
    <details
      class="folded"
      onToggle={(event) => {
        isOpen.value = event.currentTarget.open;
      }}
    >
      <summary>
        {BENCH_WORDS.groups.closed} ({standings.length})
      </summary>
      {isOpen.value && <Rows standings={standings} beside={standings} />}
    </details>
  );
}

interface RowsProps {
  readonly standings: readonly Standing[];
  /** The pieces whose faces share one scale with them. */
  readonly beside: readonly Standing[];
}

function Rows({ standings, beside }: RowsProps) {
  const scaleUmMax = useThickestUm(beside);
  return (
    <ul class="rows">
      {standings.map((standing) => (
        <PieceRow key={standing.piece.id} standing={standing} scaleUmMax={scaleUmMax} />
      ))}
    </ul>
  );
}

/** The thickest film of some pieces, so that all faces share one scale. */
function useThickestUm(standings: readonly Standing[]): number {
  const { shop, outlooks, nowMs } = useShop();
  const thicknesses = standings.map(({ piece }) =>
    filmLayers(piece, outlooks.value.get(piece.id), shop.value.jars, nowMs.value).reduce(
      (sum, { dryUm, solventUm }) => sum + dryUm + solventUm,
      0,
    ),
  );
  return Math.max(0, ...thicknesses);
}
