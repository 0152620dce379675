import { TimeField } from '../../parts/fields/time-field';
import { useForm } from '../../parts/fields/use-form';
import { useTime } from '../../parts/fields/use-time';
import { Page } from '../../parts/frame/page';
import { fromHere, linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { sayLogged } from '../../parts/frame/undo';
import { EVENT_WORDS, PIECE_FORM, PIECE_WORDS } from '../../words/piece/piece';
import { PieceForm, type PieceSaid } from './piece-form';

/** Puts a piece on the bench. */
export function StartPage() {
  const { actions } = useShop();
  const form = useForm();
  const time = useTime();

  async function start(said: PieceSaid, isWhole: boolean): Promise<void> {
    const goOn = fromHere();
    const started = await form.send(isWhole, () => actions.startPiece(said, time.instantMs() ?? Number.NaN));
    if (!started) return;
    sayLogged(actions, started.id, EVENT_WORDS.started, PIECE_FORM.started(said.name));
    goOn(linkTo('piece', started.piece));
  }

  return (
    <Page title={PIECE_FORM.newTitle} backTo={linkTo('bench')} backLabel={PIECE_WORDS.toBench}>
      <h2 class="heard">{PIECE_WORDS.details}</h2>
      <PieceForm form={form} submit={PIECE_FORM.start} onSend={(said, isWhole) => void start(said, isWhole)}>
        <TimeField label={PIECE_FORM.when} {...time.field} problem={form.refused.value?.fields['at']} />
      </PieceForm>
    </Page>
  );
}
