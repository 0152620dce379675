import { useSignal } from '@preact/signals';
import { type HumidityBy, readAirBy } from '../../actions/air/read-air-by';
import type { AirReading } from '../../logbook/fold/shop/air';
import { MOVEMENTS } from '../../logbook/kinds/shop/air';
import { LIMITS } from '../../logbook/limits';
import { Page } from '../../parts/blocks/page';
import { areWhole, given, OneOf, Quantity, Send } from '../../parts/fields/form/form-fields';
import { useForm } from '../../parts/fields/form/use-form';
import { instantOf, NOW, type TimeChoice } from '../../parts/fields/time/time-choice';
import { TimeField } from '../../parts/fields/time/time-field';
import type { Draft } from '../../parts/fields/typed-field';
import { fromHere, linkTo } from '../../parts/frame/route';
import { useShop, useUnits } from '../../parts/frame/shop-context';
import { showToast } from '../../parts/frame/toast';
import { AIR_WORDS, READ_WORDS as WORDS } from '../../words/air/air';

const FROM = [
  { value: 'shown', label: WORDS.shown },
  { value: 'dew-point', label: WORDS.dewPoint },
  { value: 'wet-bulb', label: WORDS.wetBulb },
] as const;
const HOW_IT_MOVES = MOVEMENTS.map((value) => ({ value, label: WORDS.movements[value] }));

/** What is being typed; units and instruments as last time. */
function useDrafts(last: AirReading | undefined, degrees: 'C' | 'F') {
  const unit = last?.temperature.typed.unit === 'F' ? 'F' : last ? 'C' : degrees;
  return {
    temperature: useSignal<Draft<'C' | 'F'>>({ text: '', unit }),
    by: useSignal<HumidityBy>(last?.humidityFrom?.by ?? 'shown'),
    humidity: useSignal<Draft<'%'>>({ text: '', unit: '%' }),
    damp: useSignal<Draft<'C' | 'F'>>({ text: '', unit }),
    correction: useSignal<Draft<'%'>>({ text: last?.correction?.typed.text ?? '', unit: '%' }),
    piece: useSignal<Draft<'C' | 'F'>>({ text: '', unit }),
    movement: useSignal<AirReading['movement']>(last?.movement ?? 'gentle'),
    when: useSignal<TimeChoice>(NOW),
  };
}

/** Notes the air: temperature, humidity by any instrument, movement, and the piece's own temperature. */
export function ReadAir() {
  const shop = useShop();
  const form = useForm();
  const drafts = useDrafts(shop.shop.value.airReadings.at(-1), useUnits() === 'us' ? 'F' : 'C');
  const { temperature, by, humidity, damp, correction, piece, movement, when } = drafts;
  const isShown = by.value === 'shown';

  async function send(event: Event): Promise<void> {
    const goOn = fromHere();
    event.preventDefault();
    const isWhole =
      areWhole([temperature, LIMITS.temperature], [piece, LIMITS.temperature, 'optional']) &&
      (isShown
        ? areWhole([humidity, LIMITS.humidity], [correction, LIMITS.humidityCorrection, 'optional'])
        : areWhole([damp, LIMITS.temperature]));
    const said = {
      temperature: temperature.value,
      by: by.value,
      damp: isShown ? humidity.value : damp.value,
      movement: movement.value,
      ...given('pieceTemperature', piece),
      ...(isShown && given('correction', correction)),
    };
    const kept = await form.send(isWhole, () =>
      readAirBy(shop.needs, said, instantOf(when.value, shop.needs.now()) ?? Number.NaN),
    );
    if (!kept) return;
    showToast({ text: WORDS.logged, onUndo: () => void shop.actions.undo(kept.id) });
    goOn(linkTo('air'));
  }

  return (
    <Page title={WORDS.title} backTo={linkTo('air')} backLabel={AIR_WORDS.back}>
      <form class="stack" onSubmit={send} noValidate>
        <Quantity
          label={WORDS.temperature}
          of={temperature}
          limit={LIMITS.temperature}
          form={form}
          at="temperature"
        />
        <OneOf label={WORDS.by} of={by} options={FROM} />
        {isShown ? (
          <Quantity
            key="shown"
            label={WORDS.humidity}
            of={humidity}
            limit={LIMITS.humidity}
            form={form}
            at="humidity"
          />
        ) : (
          <Quantity
            key={by.value}
            label={by.value === 'dew-point' ? WORDS.dewLabel : WORDS.wetLabel}
            of={damp}
            limit={LIMITS.temperature}
            form={form}
            at="damp"
          />
        )}
        <Quantity
          label={WORDS.piece}
          hint={WORDS.pieceHint}
          of={piece}
          limit={LIMITS.temperature}
          form={form}
          at="pieceTemperature"
          isOptional
        />
        <OneOf label={WORDS.movement} of={movement} options={HOW_IT_MOVES} />
        {isShown && (
          <Quantity
            label={WORDS.correction}
            hint={WORDS.correctionHint}
            of={correction}
            limit={LIMITS.humidityCorrection}
            form={form}
            at="correction"
            isOptional
          />
        )}
        <TimeField
          label={WORDS.when}
          value={when.value}
          onChange={(choice) => {
            when.value = choice;
          }}
          nowMs={shop.nowMs.value}
          problem={form.refused.value?.fields['at']}
        />
        <Send form={form}>{WORDS.log}</Send>
      </form>
    </Page>
  );
}
