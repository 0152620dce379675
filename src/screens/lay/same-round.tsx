import type { Signal } from '@preact/signals';
import type { Shop } from '../../logbook/fold/fold';
import { Ticks } from '../../parts/fields/tick';
import { Button } from '../../parts/frame/button';
import { useShop } from '../../parts/frame/shop-context';
import { MINUTE_MS } from '../../units';
import { ROUND_WORDS } from '../../words/piece/acts';
import type { CoatDraft } from './coat-draft';

/** Coats of one round follow each other this closely. */
const GAP_MS = 20 * MINUTE_MS;

/** The open pieces of the last round: the coats from one jar, in one way, that followed each other up to the newest one. The newest first. */
export function lastRound({ pieces }: Pick<Shop, 'pieces'>): readonly string[] {
  const coats = [...pieces.values()]
    .flatMap(({ id, closedMs, coats }) =>
      closedMs === undefined ? coats.map((coat) => ({ ...coat, on: id })) : [],
    )
    .sort((one, other) => other.atMs - one.atMs);
  const [newest] = coats;
  const round = new Set<string>();
  let beforeMs = newest?.atMs ?? 0;
  for (const { atMs, jar, how, on } of coats) {
    if (beforeMs - atMs > GAP_MS || jar !== newest?.jar || how !== newest.how) break;
    round.add(on);
    beforeMs = atMs;
  }
  return [...round];
}

/** The same coat on several pieces: those of the last round with one tap, or any of the bench. */
export function SameRound({ draft }: { readonly draft: Signal<CoatDraft> }) {
  const { shop } = useShop();
  const { piece, also } = draft.value;
  const round = lastRound(shop.value);
  const tick = (pieces: readonly string[]): void => {
    draft.value = { ...draft.value, also: pieces };
  };
  const [first = piece, ...others] = round;
  const isTicked = first === piece && others.every((id) => also.includes(id));
  const options = [...shop.value.pieces.values()]
    .filter(({ id, closedMs }) => closedMs === undefined && id !== piece)
    .map(({ id, name }) => ({ value: id, label: name }));
  if (options.length === 0) return null;
  return (
    <>
      {others.length > 0 && !isTicked && (
        <div class="acts">
          <Button
            icon="check"
            onClick={() => {
              draft.value = { ...draft.value, piece: first, also: others };
            }}
          >
            {ROUND_WORDS.same(round.length)}
          </Button>
        </div>
      )}
      <details class="more" open={also.length > 0 || undefined}>
        <summary>{ROUND_WORDS.also}</summary>
        <Ticks label={ROUND_WORDS.also} options={options} ticked={also} onTicked={tick} />
      </details>
    </>
  );
}
