import { useSignal } from '@preact/signals';
import { filmLayers } from '../../parts/film/piece-film';
import { useShop } from '../../parts/frame/shop-context';
import { byUrgency, type RowStanding } from '../../parts/time/row-standing';
import { WaitAxis } from '../../parts/time/wait-bar';
import { BENCH_WORDS } from '../../words/bench';
import { ROW_WORDS } from '../../words/bench-rows';
import { useHeldOrder } from './held-order';
import { PieceRow } from './piece-row';

/** From so many pieces on a name is typed rather than looked for. */
const SEARCH_FROM = 15;

interface RowsProps {
  readonly rows: readonly RowStanding[];
  /** The piece shown beside the list. */
  readonly here?: string | undefined;
}

/** The pieces as one picture of waiting: a row each, on one time axis. */
export function Rows({ rows, here }: RowsProps) {
  const nowMs = useShop().nowMs.value;
  const sought = useSignal('');
  const ordered = useHeldOrder(rows, nowMs);
  const scaleUm = useThickestUm(rows);
  const wanted = sought.value.trim().toLowerCase();
  const shown = ordered.filter(({ piece }) => piece.name.toLowerCase().includes(wanted));
  return (
    <>
      {rows.length >= SEARCH_FROM && (
        <input
          class="find"
          type="search"
          placeholder={ROW_WORDS.find}
          aria-label={ROW_WORDS.find}
          value={sought.value}
          onInput={(event) => {
            sought.value = event.currentTarget.value;
          }}
        />
      )}
      <WaitAxis marks={ROW_WORDS.axis} />
      <ul class="piece-rows">
        {shown.map((row) => (
          <PieceRow key={row.piece.id} row={row} scaleUm={scaleUm} isHere={row.piece.id === here} />
        ))}
      </ul>
      {shown.length === 0 && <p class="quiet">{ROW_WORDS.none}</p>}
    </>
  );
}

/** Ten years of finished pieces are drawn only when they are asked for. */
export function Closed({ rows }: RowsProps) {
  const nowMs = useShop().nowMs.value;
  const isOpen = useSignal(false);
  return (
    <details
      class="folded"
      onToggle={(event) => {
        isOpen.value = event.currentTarget.open;
      }}
    >
      <summary>
        {BENCH_WORDS.groups.closed} ({rows.length})
      </summary>
      {isOpen.value && (
        <ul class="piece-rows">
          {byUrgency(rows, nowMs).map((row) => (
            <PieceRow key={row.piece.id} row={row} scaleUm={0} />
          ))}
        </ul>
      )}
    </details>
  );
}

/** The thickest film of some pieces, µm, so that all faces share one scale. */
function useThickestUm(rows: readonly RowStanding[]): number {
  const { shop, outlooks, nowMs } = useShop();
  return Math.max(
    0,
    ...rows.map(({ piece }) =>
      filmLayers(piece, outlooks.value.get(piece.id), shop.value.jars, nowMs.value).reduce(
        (sum, { dryUm, solventUm }) => sum + dryUm + solventUm,
        0,
      ),
    ),
  );
}
