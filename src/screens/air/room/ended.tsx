import { useSignal } from '@preact/signals';
import { endSpraying } from '../../../actions/air/end-spraying';
import { LIMITS } from '../../../logbook/limits';
import { Page } from '../../../parts/blocks/page';
import { areWhole, Quantity, Send } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import { Ticks } from '../../../parts/fields/tick';
import { TimeField } from '../../../parts/fields/time/time-field';
import { useTime } from '../../../parts/fields/time/use-time';
import type { Draft } from '../../../parts/fields/typed-field';
import { fromHere, linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { filtersInUse } from '../../../shop/air/filter-clock';
import { FILTER_WORDS, ROOM_WORDS, END_WORDS as WORDS } from '../../../words/air/room';

/** Notes that the gun was put down: filters wear, and the clearance clock starts. */
export function SprayingEnded() {
  const { shop, needs, actions } = useShop();
  const form = useForm();
  const time = useTime();
  const inUse = filtersInUse(shop.value.filters);
  const lasted = useSignal<Draft<'min' | 'h'>>({ text: '', unit: 'min' });
  const worn = useSignal<readonly string[]>(inUse.map(({ id }) => id));

  async function send(event: Event): Promise<void> {
    const goOn = fromHere();
    event.preventDefault();
    const said = { lasted: lasted.value, filters: [...worn.value] };
    const kept = await form.send(areWhole([lasted, LIMITS.sprayTime]), () =>
      endSpraying(needs, said, time.instantMs() ?? Number.NaN),
    );
    if (!kept) return;
    showToast({ text: WORDS.logged, onUndo: () => void actions.undo(kept.id) });
    goOn(linkTo('air', 'room'));
  }

  return (
    <Page title={WORDS.title} backTo={linkTo('air', 'room')} backLabel={ROOM_WORDS.title}>
      <form class="stack" onSubmit={send} noValidate>
        <Quantity
          label={WORDS.lasted}
          hint={WORDS.lastedHint}
          of={lasted}
          limit={LIMITS.sprayTime}
          form={form}
          at="lasted"
        />
        <TimeField label={WORDS.when} {...time.field} problem={form.refused.value?.fields['at']} />
        {inUse.length > 0 ? (
          <Ticks
            label={WORDS.filters}
            options={inUse.map(({ id, name, part }) => ({
              value: id,
              label: name,
              hint: FILTER_WORDS.parts[part].label,
            }))}
            ticked={worn.value}
            onTicked={(ids) => {
              worn.value = ids;
            }}
          />
        ) : (
          <p class="quiet">{WORDS.noFilters}</p>
        )}
        <Send form={form}>{WORDS.log}</Send>
      </form>
    </Page>
  );
}
