import type { Piece } from '../../logbook/fold/pieces';
import { LinkButton } from '../../parts/frame/button';
import { linkTo } from '../../parts/frame/route';
import { PIECE_WORDS } from '../../words/piece/piece';

/** What a person does to a piece. */
export const Acts = ({ piece }: { readonly piece: Piece }) => (
  <div class="acts piece-acts">
    <LinkButton kind="main" icon="coat" isWide href={`${linkTo('lay')}?piece=${piece.id}`}>
      {PIECE_WORDS.lay}
    </LinkButton>
    {piece.coats.length > 0 && (
      <>
        <LinkButton icon="check" href={linkTo('piece', piece.id, 'check')}>
          {PIECE_WORDS.check}
        </LinkButton>
        <LinkButton icon="sand" href={linkTo('piece', piece.id, 'sand')}>
          {PIECE_WORDS.sand}
        </LinkButton>
      </>
    )}
  </div>
);
