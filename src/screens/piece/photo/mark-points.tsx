import { useSignal } from '@preact/signals';
import { alignPhotos } from '../../../actions/photo/take-photo';
import { Section } from '../../../parts/blocks/page';
import { Choice } from '../../../parts/fields/choice';
import { useForm } from '../../../parts/fields/form/use-form';
import { useShop } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import { alignment } from '../../../science/align';
import { PHOTO_WORDS as WORDS } from '../../../words/piece/photo';
import { Markable } from './markable';
import { inPixels, type Pair, type PhotoPoint, type Side } from './pair';
import { Save } from './save';

const POINTS = [
  { value: '0', label: WORDS.marks.first },
  { value: '1', label: WORDS.marks.second },
] as const;

/** The two points that lie on the same spot in both photos, put and kept. */
export function MarkPoints({ under, over, marks: known }: Pair) {
  const { needs, actions } = useShop();
  const form = useForm();
  const marks = useSignal(known);
  const which = useSignal<'0' | '1'>('0');
  const laid = alignment(inPixels(over, marks.value.over), inPixels(under, marks.value.under));

  async function save(): Promise<void> {
    const said = { piece: under.piece, under: under.photo, over: over.photo, marks: marks.value };
    const kept = await form.send(true, () => alignPhotos(needs, said));
    if (kept) sayLogged(actions, kept.id, WORDS.alignedWhat, WORDS.aligned);
  }
  const put = (side: Side, place: PhotoPoint): void => {
    const [first, second] = marks.value[side];
    marks.value = { ...marks.value, [side]: which.value === '0' ? [place, second] : [first, place] };
  };

  return (
    <Section title={WORDS.align}>
      <p>{WORDS.compareText}</p>
      <Choice
        label={WORDS.markWhich}
        options={POINTS}
        value={which.value}
        onChange={(value) => {
          which.value = value;
        }}
      />
      <Markable
        photo={under}
        at={marks.value.under[which.value]}
        side={WORDS.under}
        marks={marks.value.under}
        onPut={(at) => put('under', at)}
      />
      <Markable
        photo={over}
        at={marks.value.over[which.value]}
        side={WORDS.over}
        marks={marks.value.over}
        onPut={(at) => put('over', at)}
      />
      {!laid && <p role="status">{WORDS.samePoint}</p>}
      <Save form={form} onSave={save} disabled={!laid}>
        {WORDS.align}
      </Save>
    </Section>
  );
}
