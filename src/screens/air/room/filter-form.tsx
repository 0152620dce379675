import { useSignal } from '@preact/signals';
import { openFilter } from '../../../actions/air/open-filter';
import { FILTER_PARTS } from '../../../logbook/kinds/shop/cartridge';
import { LIMITS } from '../../../logbook/limits';
import { Page } from '../../../parts/blocks/page';
import { areWhole, given, OneOf, Quantity, Send } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import { TextField } from '../../../parts/fields/text-field';
import type { Draft } from '../../../parts/fields/typed-field';
import { fromHere, linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { FILTER_WORDS as WORDS } from '../../../words/air/room';
import { LOGBOOK_WORDS } from '../../../words/frame/logbook';

const PARTS = FILTER_PARTS.map((value) => ({ value, ...WORDS.parts[value] }));

/** Puts a cartridge or filter into use, with the schedule that the person sets. */
export function FilterForm() {
  const { needs, actions } = useShop();
  const form = useForm();
  const part = useSignal<(typeof FILTER_PARTS)[number]>('cartridge');
  const name = useSignal('');
  const wear = useSignal<Draft<'h'>>({ text: '', unit: 'h' });
  const open = useSignal<Draft<'d'>>({ text: '', unit: 'd' });
  const basis = useSignal('');
  const hasName = name.value.trim() !== '';

  async function send(event: Event): Promise<void> {
    const goOn = fromHere();
    event.preventDefault();
    const isWhole =
      hasName && areWhole([wear, LIMITS.wearTime, 'optional'], [open, LIMITS.openTime, 'optional']);
    const said = {
      part: part.value,
      name: name.value,
      ...given('wear', wear),
      ...given('open', open),
      ...(basis.value.trim() !== '' && { basis: basis.value }),
    };
    const kept = await form.send(isWhole, () => openFilter(needs, said));
    if (!kept) return;
    showToast({ text: WORDS.saved(kept.name), onUndo: () => void actions.undo(kept.id) });
    goOn(linkTo('air', 'filters'));
  }

  return (
    <Page title={WORDS.openTitle} backTo={linkTo('air', 'filters')} backLabel={WORDS.title}>
      <form class="stack wide-tiles" onSubmit={send} noValidate>
        <OneOf label={WORDS.part} of={part} options={PARTS} />
        <TextField
          label={WORDS.name}
          text={name.value}
          onText={(text) => {
            name.value = text;
          }}
          hint={WORDS.nameHint}
          problem={
            (form.isTried.value && !hasName ? LOGBOOK_WORDS.empty : undefined) ??
            form.refused.value?.fields['name']
          }
        />
        <Quantity
          label={WORDS.wear}
          of={wear}
          limit={LIMITS.wearTime}
          form={form}
          at="wear"
          isOptional
          hint={WORDS.scheduleHint}
        />
        <Quantity
          label={WORDS.openFor}
          of={open}
          limit={LIMITS.openTime}
          form={form}
          at="open"
          isOptional
          hint={WORDS.scheduleHint}
        />
        <TextField
          label={WORDS.basis}
          text={basis.value}
          onText={(text) => {
            basis.value = text;
          }}
          hint={WORDS.basisHint}
          isLong
        />
        <Send form={form}>{WORDS.save}</Send>
      </form>
    </Page>
  );
}
