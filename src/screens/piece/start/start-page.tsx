import type { Piece } from '../../../logbook/fold/piece/pieces';
import { Page } from '../../../parts/blocks/page';
import { nextName } from '../../../parts/fields/form/next-name';
import { useForm } from '../../../parts/fields/form/use-form';
import { TimeField } from '../../../parts/fields/time/time-field';
import { useTime } from '../../../parts/fields/time/use-time';
import { fromHere, linkTo, route } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import { EVENT_WORDS, PIECE_FORM, PIECE_WORDS } from '../../../words/piece/piece';
import { PieceForm, type PieceSaid } from './piece-form';

/** Another piece like one of the bench, as the form shows it: of what was found on that one it knows nothing. */
function another(id: string, pieces: ReadonlyMap<string, Piece>): Piece | undefined {
  const like = pieces.get(id);
  if (!like) return undefined;
  const { note: _, ...piece } = like;
  const name = nextName(
    like.name,
    [...pieces.values()].map((one) => one.name),
  );
  return { ...piece, id: '', name };
}

/** Puts a piece on the bench. */
export function StartPage() {
  const { actions, shop } = useShop();
  const piece = another(route.value.query.get('like') ?? '', shop.value.pieces);
  const form = useForm();
  const time = useTime();

  async function start(said: PieceSaid, isWhole: boolean, ...to: readonly 'old'[]): Promise<void> {
    const goOn = fromHere();
    const started = await form.send(isWhole, () => actions.startPiece(said, time.instantMs() ?? Number.NaN));
    if (!started) return;
    sayLogged(actions, started.id, EVENT_WORDS.started, PIECE_FORM.started(said.name));
    goOn(linkTo('piece', started.piece, ...to));
  }

  return (
    <Page title={PIECE_FORM.newTitle} backTo={linkTo('bench')} backLabel={PIECE_WORDS.toBench}>
      <h2 class="heard">{PIECE_WORDS.details}</h2>
      <PieceForm
        {...(piece && { piece })}
        form={form}
        submit={PIECE_FORM.start}
        onSend={(said, isWhole) => void start(said, isWhole)}
        onTest={(said, isWhole) => void start(said, isWhole, 'old')}
      >
        <TimeField label={PIECE_FORM.when} {...time.field} problem={form.refused.value?.fields['at']} />
      </PieceForm>
    </Page>
  );
}
