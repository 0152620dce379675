import type { Piece } from '../../logbook/fold/piece/pieces';
import { LinkButton } from '../../parts/blocks/button';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { NEXT_ACT_WORDS } from '../../words/piece/acts';
import { PIECE_WORDS } from '../../words/piece/piece';

/** What a person does to a piece. Amber is what comes next; nothing is while it is wet or held. */
export function Acts({ piece }: { readonly piece: Piece }) {
  const verdict = useShop().standings.value.get(piece.id)?.verdict;
  const isNext = verdict?.word === 'ready' || verdict?.word === 'perhaps';
  const act = isNext ? verdict.act : undefined;
  const isCoat = act === 'coat' || (piece.coats.length === 0 && !verdict);
  const sanding = act === 'level-sand' || act === 'rub-out' ? act : undefined;
  return (
    <div class="acts piece-acts">
      {sanding && (
        <LinkButton
          kind="main"
          icon={sanding === 'rub-out' ? 'rub' : 'sand'}
          isWide
          href={linkTo('piece', piece.id, 'sand')}
        >
          {NEXT_ACT_WORDS[sanding]}
        </LinkButton>
      )}
      <LinkButton
        kind={isCoat ? 'main' : 'usual'}
        icon="coat"
        isWide={isCoat}
        href={`${linkTo('lay')}?piece=${piece.id}`}
      >
        {PIECE_WORDS.lay}
      </LinkButton>
      {piece.coats.length > 0 && (
        <LinkButton icon="check" href={linkTo('piece', piece.id, 'check')}>
          {PIECE_WORDS.check}
        </LinkButton>
      )}
      {piece.coats.length + piece.grounds.length > 0 && !sanding && (
        <LinkButton icon="sand" href={linkTo('piece', piece.id, 'sand')}>
          {PIECE_WORDS.sand}
        </LinkButton>
      )}
    </div>
  );
}
