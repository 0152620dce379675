import { useSignal } from '@preact/signals';
import { describeRoom } from '../../../actions/air/describe-room';
import type { Room } from '../../../logbook/fold/shop/shop-air';
import { FLOW_ORIGINS } from '../../../logbook/kinds/shop/room';
import { LIMITS } from '../../../logbook/limits';
import { Page } from '../../../parts/blocks/page';
import { areWhole, given, OneOf, Quantity, Send } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import type { Draft } from '../../../parts/fields/typed-field';
import { fromHere, linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { ROOM_WORDS as WORDS } from '../../../words/air/room';

const ORIGINS = FLOW_ORIGINS.map((value) => ({ value, ...WORDS.flowOrigins[value] }));
const USUAL_MIXING = '5';

function useDrafts(room: Room | undefined, isUs: boolean) {
  const drafted = <U extends string>(typed: { text: string; unit: string } | undefined, unit: U) =>
    (typed ?? { text: '', unit }) as Draft & { unit: U };
  return {
    volume: useSignal<Draft<'m3' | 'ft3'>>(drafted(room?.volume.typed, isUs ? 'ft3' : 'm3')),
    airFlow: useSignal<Draft<'m3/h' | 'cfm'>>(drafted(room?.airFlow.typed, isUs ? 'cfm' : 'm3/h')),
    mixing: useSignal<Draft<'ratio'>>({ text: room?.mixing.typed.text ?? USUAL_MIXING, unit: 'ratio' }),
    limit: useSignal<Draft<'%'>>({ text: room?.explosiveLimit?.typed.text ?? '', unit: '%' }),
    flowFrom: useSignal<Room['flowFrom']>(room?.flowFrom ?? 'rated'),
  };
}

/** Says what the room is and how it is aired. */
export function RoomForm() {
  const { shop, needs, actions } = useShop();
  const form = useForm();
  const { volume, airFlow, mixing, limit, flowFrom } = useDrafts(shop.value.room, useUnits() === 'us');

  async function send(event: Event): Promise<void> {
    const goOn = fromHere();
    event.preventDefault();
    const isWhole = areWhole(
      [volume, LIMITS.roomVolume],
      [airFlow, LIMITS.airFlow],
      [mixing, LIMITS.mixingFactor],
      [limit, LIMITS.explosiveLimit, 'optional'],
    );
    const said = {
      volume: volume.value,
      airFlow: airFlow.value,
      flowFrom: flowFrom.value,
      mixing: mixing.value,
      ...given('explosiveLimit', limit),
    };
    const kept = await form.send(isWhole, () => describeRoom(needs, said));
    if (!kept) return;
    showToast({ text: WORDS.saved, onUndo: () => void actions.undo(kept.id) });
    goOn(linkTo('air', 'room'));
  }

  return (
    <Page title={WORDS.describe} backTo={linkTo('air', 'room')} backLabel={WORDS.title}>
      <form class="stack" onSubmit={send} noValidate>
        <Quantity
          label={WORDS.volume}
          hint={WORDS.volumeHint}
          of={volume}
          limit={LIMITS.roomVolume}
          form={form}
          at="volume"
        />
        <Quantity label={WORDS.flow} of={airFlow} limit={LIMITS.airFlow} form={form} at="airFlow" />
        <OneOf label={WORDS.flowFrom} of={flowFrom} options={ORIGINS} />
        <Quantity
          label={WORDS.mixing}
          hint={WORDS.mixingHint}
          of={mixing}
          limit={LIMITS.mixingFactor}
          form={form}
          at="mixing"
        />
        <Quantity
          label={WORDS.limit}
          hint={WORDS.limitHint}
          of={limit}
          limit={LIMITS.explosiveLimit}
          form={form}
          at="explosiveLimit"
          isOptional
        />
        <Send form={form}>{WORDS.save}</Send>
      </form>
    </Page>
  );
}
