import { Button } from '../../../parts/blocks/button';
import { Page, Section } from '../../../parts/blocks/page';
import { type Form, useForm } from '../../../parts/fields/form/use-form';
import { fromHere, linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import { EVENT_WORDS, PIECE_FORM } from '../../../words/piece/piece';
import { usePiece } from '../use-piece';
import { PieceForm, type PieceSaid } from './piece-form';

/** Says something new of a piece, or takes it off the bench. */
export function ChangePage() {
  const { actions } = useShop();
  const { piece } = usePiece();
  const form = useForm();

  async function keep(said: PieceSaid, isWhole: boolean): Promise<void> {
    const goOn = fromHere();
    const kept = await form.send(isWhole, () => actions.changePiece({ piece: piece.id, ...said }));
    if (!kept) return;
    sayLogged(actions, kept.id, EVENT_WORDS.changed, PIECE_FORM.saved);
    goOn(linkTo('piece', piece.id));
  }

  return (
    <Page title={PIECE_FORM.changeTitle} backTo={linkTo('piece', piece.id)}>
      <Section title={piece.name}>
        <PieceForm
          piece={piece}
          form={form}
          submit={PIECE_FORM.save}
          onSend={(said, isWhole) => void keep(said, isWhole)}
        />
      </Section>
      {piece.closedMs === undefined && <Closing form={form} />}
    </Page>
  );
}

function Closing({ form }: { readonly form: Form }) {
  const { actions } = useShop();
  const { piece } = usePiece();

  async function close(): Promise<void> {
    const goOn = fromHere();
    const closed = await form.send(true, () => actions.closePiece(piece.id));
    if (!closed) return;
    sayLogged(actions, closed.id, EVENT_WORDS.closed, PIECE_FORM.closed(piece.name));
    goOn(linkTo('bench'));
  }

  return (
    <Section title={PIECE_FORM.close}>
      <p>{PIECE_FORM.closeText}</p>
      <div class="acts">
        <Button onClick={() => void close()}>{PIECE_FORM.close}</Button>
      </div>
    </Section>
  );
}
