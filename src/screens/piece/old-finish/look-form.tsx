import { seeOldFinish } from '../../../actions/air/see-old-finish';
import type { OldFinishRecord } from '../../../logbook/fold/piece/old-finishes';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { Icon } from '../../../parts/blocks/icons';
import { Notice } from '../../../parts/blocks/notice';
import { OneOf, Send, Words } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import { Ticks } from '../../../parts/fields/tick';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { OLD_FINISH_SIGNS, UV_LOOKS } from '../../../science/old-finish/signs';
import { OLD_WORDS as WORDS } from '../../../words/piece/old-finish';
import { useLookDraft } from './look-draft';

const KINDS = [
  { value: 'clear', label: WORDS.clear },
  { value: 'opaque', label: WORDS.opaque },
] as const;
const GLOWS = [...UV_LOOKS, 'none' as const].map((value) => ({ value, ...WORDS.uvs[value] }));
const LAYERS = (['1', '2', '3', 'none'] as const).map((value) => ({
  value,
  label: WORDS.layerCounts[value],
}));
const SIGNS = OLD_FINISH_SIGNS.map((value) => ({ value, label: WORDS.sign[value] }));

interface LookFormProps {
  readonly piece: Piece;
  readonly seen: OldFinishRecord['seen'];
}

/** Saves what the old finish looks like, and says at once what each sign means. */
export function LookForm({ piece, seen }: LookFormProps) {
  const { needs, actions } = useShop();
  const form = useForm();
  const draft = useLookDraft(seen);
  const { kind, uv, layers, layersSeen, madeAbout, signs, look, isYear, isUnsaved } = draft;

  async function send(event: Event): Promise<void> {
    event.preventDefault();
    const kept = await form.send(look !== undefined, () =>
      seeOldFinish(needs, { piece: piece.id, ...(look ?? { opaque: false, signs: [] }) }),
    );
    if (kept) showToast({ text: WORDS.savedLook, onUndo: () => void actions.undo(kept.id) });
  }

  return (
    <form class="stack" onSubmit={send} noValidate>
      <OneOf
        label={WORDS.kind}
        of={kind}
        options={KINDS}
        problem={form.isTried.value && kind.value === undefined ? WORDS.kindMissing : undefined}
      />
      <div class="wide-tiles">
        <OneOf label={WORDS.uv} of={uv} options={GLOWS} />
      </div>
      <OneOf label={WORDS.layers} of={layers} options={LAYERS} />
      {layers.value !== 'none' && layers.value !== '1' && (
        <Words
          label={WORDS.layersSeen}
          hint={WORDS.layersSeenHint}
          of={layersSeen}
          form={form}
          at="layersSeen"
        />
      )}
      <Words
        label={WORDS.madeAbout}
        hint={WORDS.madeAboutHint}
        of={madeAbout}
        form={form}
        at="madeAbout"
        problem={isYear ? undefined : WORDS.madeAboutProblem}
      />
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
      {isUnsaved && (
        <p class="state" data-kind="wait">
          <Icon name="waiting" />
          {WORDS.notSaved}
        </p>
      )}
      <Send form={form}>{WORDS.saveLook}</Send>
    </form>
  );
}
