import { useSignal } from '@preact/signals';
import { seeOldFinish } from '../../../actions/air/see-old-finish';
import type { OldFinishRecord } from '../../../logbook/fold/old-finishes';
import type { Piece } from '../../../logbook/fold/pieces';
import { OLD_FINISH_SIGNS } from '../../../logbook/kinds/spot-test';
import { OneOf, Send } from '../../../parts/fields/form-fields';
import { Ticks } from '../../../parts/fields/tick';
import { useForm } from '../../../parts/fields/use-form';
import { Notice } from '../../../parts/frame/notice';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { OLD_WORDS as WORDS } from '../../../words/air/old-finish';

type Sign = (typeof OLD_FINISH_SIGNS)[number];

const KINDS = [
  { value: 'clear', label: WORDS.clear },
  { value: 'opaque', label: WORDS.opaque },
] as const;
const SIGNS = OLD_FINISH_SIGNS.map((value) => ({ value, label: WORDS.sign[value] }));

interface LookFormProps {
  readonly piece: Piece;
  readonly seen: OldFinishRecord['seen'];
}

/** Notes what the old finish looks like, and says at once what each sign means. */
export function LookForm({ piece, seen }: LookFormProps) {
  const { needs, actions } = useShop();
  const form = useForm();
  const kind = useSignal<'clear' | 'opaque'>(seen?.opaque ? 'opaque' : 'clear');
  const signs = useSignal<readonly Sign[]>(seen?.signs ?? []);

  async function send(event: Event): Promise<void> {
    event.preventDefault();
    const said = { piece: piece.id, opaque: kind.value === 'opaque', signs: [...signs.value] };
    const kept = await form.send(true, () => seeOldFinish(needs, said));
    if (kept) showToast({ text: WORDS.savedLook, onUndo: () => void actions.undo(kept.id) });
  }

  return (
    <form class="stack" onSubmit={send} noValidate>
      <OneOf label={WORDS.kind} of={kind} options={KINDS} />
      <Ticks
        label={WORDS.signs}
        options={SIGNS}
        ticked={signs.value}
        onTicked={(ticked) => {
          signs.value = ticked;
        }}
      />
      {signs.value.map((sign) => (
        <Notice key={sign} kind="caution" title={WORDS.sign[sign]}>
          <p>{WORDS.signTexts[sign]}</p>
        </Notice>
      ))}
      <Send form={form}>{WORDS.saveLook}</Send>
    </form>
  );
}
