import { useSignal } from '@preact/signals';
import { coatCardWith } from '../../../actions/card/log-card';
import type { Coat, Piece } from '../../../logbook/fold/piece/pieces';
import { Button } from '../../../parts/blocks/button';
import { Section } from '../../../parts/blocks/page';
import { Refusal } from '../../../parts/fields/form/refusal';
import { useForm } from '../../../parts/fields/form/use-form';
import { Ticks } from '../../../parts/fields/tick';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { type TestCard, takesCoats } from '../../../shop/card/cards';
import { TOLD_WORDS as WORDS } from '../../../words/piece/card';
import { FILM_WORDS } from '../../../words/piece/coat/film';
import { whenWords } from '../../../words/times';

interface CoatsProps {
  readonly card: TestCard;
  readonly piece: Piece | undefined;
}

/** The coats that the card got, and those of its piece that it may have got too. */
export function CoatsOnIt({ card, piece }: CoatsProps) {
  const { nowMs } = useShop();
  const numbers = new Map(piece?.coats.map(({ id }, i) => [id, i + 1]));
  const missing = (piece?.coats ?? []).filter(
    ({ id, atMs }) => !card.withCoats.has(id) && atMs > card.madeMs,
  );
  return (
    <Section title={WORDS.coats}>
      {card.coats.length === 0 && <p class="quiet">{WORDS.noCoats}</p>}
      <ul class="lines digits">
        {card.coats.map(({ id, atMs }, i) => (
          <li key={id}>
            {FILM_WORDS.coat(numbers.get(id) ?? i + 1)}, {whenWords(atMs, nowMs.value)}
          </li>
        ))}
      </ul>
      {takesCoats(card) && missing.length > 0 && <Missing card={card} coats={missing} numbers={numbers} />}
    </Section>
  );
}

interface MissingProps {
  readonly card: TestCard;
  readonly coats: readonly Coat[];
  readonly numbers: ReadonlyMap<string, number>;
}

function Missing({ card, coats, numbers }: MissingProps) {
  const { needs, actions, nowMs } = useShop();
  const form = useForm();
  const ticked = useSignal<readonly string[]>([]);

  async function log(): Promise<void> {
    const chosen = coats.filter(({ id }) => ticked.value.includes(id));
    const logged: string[] = [];
    const done = await form.send(chosen.length > 0, async () => {
      for (const coat of chosen) {
        const one = await coatCardWith(needs, card.id, coat);
        if (!one.ok) return one;
        logged.push(one.value.id);
      }
      return { ok: true, value: logged } as const;
    });
    if (!done) return;
    ticked.value = [];
    showToast({
      text: WORDS.alsoLogged(logged.length),
      onUndo: () => void Promise.all(logged.map((id) => actions.undo(id))),
    });
  }

  return (
    <>
      <Ticks
        label={WORDS.also}
        options={coats.map(({ id, atMs }) => ({
          value: id,
          label: FILM_WORDS.coat(numbers.get(id) ?? 0),
          hint: whenWords(atMs, nowMs.value),
        }))}
        ticked={ticked.value}
        onTicked={(next) => {
          ticked.value = next;
        }}
      />
      <Refusal refused={form.refused.value} />
      {ticked.value.length > 0 && (
        <div class="acts">
          <Button icon="check" onClick={() => void log()}>
            {WORDS.alsoLog}
          </Button>
        </div>
      )}
    </>
  );
}
