import type { Signal } from '@preact/signals';
import type { Shop } from '../../logbook/fold/fold';
import { Button } from '../../parts/blocks/button';
import { Line } from '../../parts/fields/line';
import { named } from '../../parts/fields/select-field';
import { Ticks } from '../../parts/fields/tick';
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

interface OnSeveral {
  readonly draft: Signal<CoatDraft>;
}

/** The same coat on the pieces of the last round, with one tap. */
export function SameRound({ draft }: OnSeveral) {
  const { piece, also } = draft.value;
  const round = lastRound(useShop().shop.value);
  const [first = piece, ...others] = round;
  const isTicked = first === piece && others.every((id) => also.includes(id));
  if (others.length === 0 || isTicked) return null;
  return (
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
  );
}

/** The same coat on any pieces of the bench. */
export function AlsoOn({ draft }: OnSeveral) {
  const { piece, also } = draft.value;
  const others = [...useShop().shop.value.pieces.values()].filter(
    ({ id, closedMs }) => closedMs === undefined && id !== piece,
  );
  if (others.length === 0) return null;
  const ticked = others.filter(({ id }) => also.includes(id)).map(({ name }) => name);
  return (
    <Line label={ROUND_WORDS.also} says={ticked.join(', ') || ROUND_WORDS.none}>
      <Ticks
        label={ROUND_WORDS.also}
        options={named(others)}
        ticked={also}
        onTicked={(pieces) => {
          draft.value = { ...draft.value, also: pieces };
        }}
      />
    </Line>
  );
}
