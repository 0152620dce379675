import { Section } from '../../parts/page';
import { filmLayers } from '../../parts/piece-film';
import { useShop } from '../../parts/shop-context';
import type { Group, Standing } from '../../parts/standing';
import { BENCH_WORDS } from '../../words/bench';
import { PieceRow } from './piece-row';

const OPEN_GROUPS: readonly Group[] = ['now', 'next', 'later'];

/** The pieces, in groups by what may be touched first; closed ones folded away. */
export function Groups({ standings }: { readonly standings: readonly Standing[] }) {
  const scaleUmMax = useThickestUm(standings);
  const rowsOf = (group: Group) =>
    standings
      .filter((standing) => standing.group === group)
      .map((standing) => <PieceRow key={standing.piece.id} standing={standing} scaleUmMax={scaleUmMax} />);
  const closed = rowsOf('closed');
  return (
    <div class="bench-groups">
      {OPEN_GROUPS.map((group) => {
        const rows = rowsOf(group);
        return (
          rows.length > 0 && (
            <Section key={group} title={BENCH_WORDS.groups[group]}>
              <ul class="rows">{rows}</ul>
            </Section>
          )
        );
      })}
      {closed.length > 0 && (
        <details class="folded">
          <summary>
            {BENCH_WORDS.groups.closed} ({closed.length})
          </summary>
          <ul class="rows">{closed}</ul>
        </details>
      )}
    </div>
  );
}

/** The thickest film on the bench, so that all faces share one scale. */
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
