import { keepBoth } from '../../../actions/hub/keep-both';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { Button } from '../../../parts/blocks/button';
import { Notice } from '../../../parts/blocks/notice';
import { sayRefused } from '../../../parts/frame/say-refused';
import { useShop } from '../../../parts/frame/shop-context';
import { sayLogged, undoWithToast } from '../../../parts/frame/undo';
import { byWhom } from '../../../shop/record/by-whom';
import { loggedTwice } from '../../../shop/record/logged-twice';
import { TWICE_WORDS } from '../../../words/piece/coat/twice';
import { clockWords } from '../../../words/times';

/** Asks whether two coats that two phones logged within a minute are one; nothing is merged by itself. */
export function LoggedTwice({ piece }: { readonly piece: Piece }) {
  const { shop, actions, needs } = useShop();
  const found = loggedTwice(piece, shop.value);
  if (!found) return null;
  const [first, second] = found.map(({ id, atMs }) => ({
    id,
    words: TWICE_WORDS.by(byWhom(id, shop.value) ?? '', clockWords(atMs)),
  })) as [Told, Told];
  const keep = async (): Promise<void> => {
    const kept = await keepBoth(needs, piece.id, second.id);
    if (kept.ok) sayLogged(actions, kept.value.id, TWICE_WORDS.answer, TWICE_WORDS.kept);
    else sayRefused(kept.failure);
  };
  return (
    <Notice kind="note" title={TWICE_WORDS.title}>
      <p>{TWICE_WORDS.text(first.words, second.words)}</p>
      <div class="acts">
        <Button onClick={() => void keep()}>{TWICE_WORDS.keepBoth}</Button>
        <Button onClick={() => void undoWithToast(actions, second.id, TWICE_WORDS.second)}>
          {TWICE_WORDS.isOne}
        </Button>
      </div>
    </Notice>
  );
}

interface Told {
  readonly id: string;
  readonly words: string;
}
