import { useSignal } from '@preact/signals';
import type { AirReading, Forecast } from '../../logbook/fold/shop/air';
import { MOVEMENTS } from '../../logbook/kinds/shop/air';
import { LIMITS } from '../../logbook/limits';
import { Page } from '../../parts/blocks/page';
import { areWhole, given, OneOf, Quantity, Send } from '../../parts/fields/form/form-fields';
import { useForm } from '../../parts/fields/form/use-form';
import { DateField } from '../../parts/fields/time/date-field';
import type { Draft } from '../../parts/fields/typed-field';
import { fromHere, linkTo } from '../../parts/frame/route';
import { useShop, useUnits } from '../../parts/frame/shop-context';
import { showToast } from '../../parts/frame/toast';
import { AIR_WORDS, READ_WORDS, FORECAST_WORDS as WORDS } from '../../words/air/air';

const DAY_FROM = '07:00';
const NIGHT_FROM = '19:00';
const HOW_IT_MOVES = MOVEMENTS.map((value) => ({ value, label: READ_WORDS.movements[value] }));

/** What is being typed, from the forecast set last. */
function useDrafts(set: Forecast | undefined, degrees: 'C' | 'F') {
  return {
    day: useSignal<Draft<'C' | 'F'>>(
      (set?.dayTemperature.typed as Draft<'C'>) ?? { text: '', unit: degrees },
    ),
    night: useSignal<Draft<'C' | 'F'>>(
      (set?.nightTemperature.typed as Draft<'C'>) ?? { text: '', unit: degrees },
    ),
    humidity: useSignal<Draft<'%'>>({ text: set?.humidity?.typed.text ?? '', unit: '%' }),
    dayFrom: useSignal(set?.dayFrom ?? DAY_FROM),
    nightFrom: useSignal(set?.nightFrom ?? NIGHT_FROM),
    movement: useSignal<AirReading['movement']>(set?.movement ?? 'still'),
  };
}

/** Says what the shop will be like by day and by night. */
export function SetForecast() {
  const shop = useShop();
  const form = useForm();
  const drafts = useDrafts(shop.shop.value.forecast, useUnits() === 'us' ? 'F' : 'C');
  const { day, night, humidity, dayFrom, nightFrom, movement } = drafts;
  const refused = form.refused.value?.fields;

  async function send(event: Event): Promise<void> {
    const goOn = fromHere();
    event.preventDefault();
    const isWhole = areWhole(
      [day, LIMITS.temperature],
      [night, LIMITS.temperature],
      [humidity, LIMITS.humidity, 'optional'],
    );
    const kept = await form.send(isWhole, () =>
      shop.actions.setForecast({
        dayTemperature: day.value,
        nightTemperature: night.value,
        dayFrom: dayFrom.value,
        nightFrom: nightFrom.value,
        movement: movement.value,
        ...given('humidity', humidity),
      }),
    );
    if (!kept) return;
    showToast({ text: WORDS.saved, onUndo: () => void shop.actions.undo(kept.id) });
    goOn(linkTo('air'));
  }

  return (
    <Page title={WORDS.title} backTo={linkTo('air')} backLabel={AIR_WORDS.back}>
      <form class="stack" onSubmit={send} noValidate>
        <p>{WORDS.intro}</p>
        <Quantity label={WORDS.day} of={day} limit={LIMITS.temperature} form={form} at="dayTemperature" />
        <DateField
          label={WORDS.dayFrom}
          kind="time"
          day={dayFrom.value}
          onDay={(time) => {
            dayFrom.value = time;
          }}
          problem={refused?.['dayFrom']}
        />
        <Quantity
          label={WORDS.night}
          of={night}
          limit={LIMITS.temperature}
          form={form}
          at="nightTemperature"
        />
        <DateField
          label={WORDS.nightFrom}
          kind="time"
          day={nightFrom.value}
          onDay={(time) => {
            nightFrom.value = time;
          }}
          problem={refused?.['nightFrom']}
        />
        <Quantity
          label={WORDS.humidity}
          hint={WORDS.humidityHint}
          of={humidity}
          limit={LIMITS.humidity}
          form={form}
          at="humidity"
          isOptional
        />
        <OneOf label={WORDS.movement} of={movement} options={HOW_IT_MOVES} />
        <Send form={form}>{WORDS.save}</Send>
      </form>
    </Page>
  );
}
