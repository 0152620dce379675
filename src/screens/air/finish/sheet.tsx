import { useSignal } from '@preact/signals';
import { enterSheet } from '../../../actions/air/enter-sheet';
import { isCuring } from '../../../estimator/finishes/finish-law';
import { totalLimitM } from '../../../estimator/finishes/total-film';
import { finishTraits } from '../../../estimator/finishes/traits';
import type { DataSheet } from '../../../logbook/fold/mix/data-sheets';
import type { Jar } from '../../../logbook/fold/mix/jars';
import { LIMITS } from '../../../logbook/limits';
import { Page } from '../../../parts/blocks/page';
import { areWhole, given, Quantity, Send } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import type { Draft } from '../../../parts/fields/typed-field';
import { fromHere, linkTo, route } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { sheetOf } from '../../../shop/stack/sheet-times';
import { FINISH_WORDS, SHEET_WORDS as WORDS } from '../../../words/air/finishes';
import { Finishes } from './finishes';

type Time = Draft<'min' | 'h' | 'd'>;

/** The times of the product's own data sheet, at the sheet's own conditions. */
export function SheetPage() {
  const jar = useShop().shop.value.jars.get(route.value.rest[1] ?? '');
  return jar ? <SheetForm jar={jar} /> : <Finishes />;
}

function useDrafts(sheet: DataSheet | undefined, isUs: boolean) {
  const time = (typed: Draft | undefined, unit: Time['unit']): Time => (typed ?? { text: '', unit }) as Time;
  return {
    temperature: useSignal(
      (sheet?.temperature.typed ?? { text: isUs ? '70' : '21', unit: isUs ? 'F' : 'C' }) as Draft<'C' | 'F'>,
    ),
    humidity: useSignal<Draft<'%'>>({ text: sheet?.humidity.typed.text ?? '50', unit: '%' }),
    wetFilm: useSignal(
      (sheet?.wetFilm?.typed ?? { text: '', unit: isUs ? 'mil' : 'um' }) as Draft<'um' | 'mil'>,
    ),
    touch: useSignal(time(sheet?.times.touch?.typed, 'min')),
    recoatFrom: useSignal(time(sheet?.times.recoatFrom?.typed, 'min')),
    recoatUntil: useSignal(time(sheet?.times.recoatUntil?.typed, 'h')),
    sand: useSignal(time(sheet?.times.sand?.typed, 'h')),
    cured: useSignal(time(sheet?.times.cured?.typed, 'd')),
    potLife: useSignal(time(sheet?.potLife?.typed, 'h')),
    totalFilm: useSignal(
      (sheet?.totalFilm?.typed ?? { text: '', unit: isUs ? 'mil' : 'um' }) as Draft<'um' | 'mil'>,
    ),
  };
}

function SheetForm({ jar }: { readonly jar: Jar }) {
  const { shop, needs, actions } = useShop();
  const form = useForm();
  const drafts = useDrafts(sheetOf(jar.id, shop.value), useUnits() === 'us');
  const { temperature, humidity, wetFilm, touch, recoatFrom, recoatUntil, sand, cured, potLife, totalFilm } =
    drafts;
  const { finish } = jar.product;
  const { hasWindow } = finishTraits(finish);
  const times = [touch, recoatFrom, recoatUntil, sand, cured, potLife] as const;

  async function send(event: Event): Promise<void> {
    const goOn = fromHere();
    event.preventDefault();
    const isWhole =
      areWhole([temperature, LIMITS.temperature], [humidity, LIMITS.humidity]) &&
      areWhole(...times.map((one) => [one, LIMITS.sheetTime, 'optional'] as const)) &&
      areWhole([totalFilm, LIMITS.totalFilm, 'optional'], [wetFilm, LIMITS.wetFilm, 'optional']);
    const said = {
      jar: jar.id,
      temperature: temperature.value,
      humidity: humidity.value,
      times: {
        ...given('touch', touch),
        ...given('recoatFrom', recoatFrom),
        ...given('recoatUntil', recoatUntil),
        ...given('sand', sand),
        ...given('cured', cured),
      },
      ...given('wetFilm', wetFilm),
      ...given('potLife', potLife),
      ...given('totalFilm', totalFilm),
    };
    const kept = await form.send(isWhole, () => enterSheet(needs, said));
    if (!kept) return;
    showToast({ text: WORDS.saved, onUndo: () => void actions.undo(kept.id) });
    goOn(linkTo('air', 'finishes'));
  }

  const time = (label: string, of: (typeof times)[number], at: string, hint: string = WORDS.empty) => (
    <Quantity label={label} of={of} limit={LIMITS.sheetTime} form={form} at={at} hint={hint} isOptional />
  );
  return (
    <Page title={WORDS.title} backTo={linkTo('air', 'finishes')} backLabel={FINISH_WORDS.title}>
      <form class="stack" onSubmit={send} noValidate>
        <p>
          <strong>{jar.name}</strong>
        </p>
        <p>{WORDS.intro}</p>
        <Quantity
          label={WORDS.temperature}
          of={temperature}
          limit={LIMITS.temperature}
          form={form}
          at="temperature"
        />
        <Quantity label={WORDS.humidity} of={humidity} limit={LIMITS.humidity} form={form} at="humidity" />
        <Quantity
          label={WORDS.wetFilm}
          of={wetFilm}
          limit={LIMITS.wetFilm}
          form={form}
          at="wetFilm"
          hint={WORDS.wetFilmHint}
          isOptional
        />
        {time(WORDS.touch, touch, 'times.touch')}
        {time(WORDS.recoatFrom, recoatFrom, 'times.recoatFrom')}
        {hasWindow && time(WORDS.recoatUntil, recoatUntil, 'times.recoatUntil', WORDS.recoatUntilHint)}
        {time(WORDS.sand, sand, 'times.sand')}
        {time(WORDS.cured, cured, 'times.cured')}
        {(finish === 'conversion' || finish === 'urethane') && time(WORDS.potLife, potLife, 'potLife')}
        {isCuring(finish) && (
          <Quantity
            label={WORDS.totalFilm}
            of={totalFilm}
            limit={LIMITS.totalFilm}
            form={form}
            at="totalFilm"
            hint={totalLimitM(finish) === undefined ? WORDS.empty : undefined}
            isOptional
          />
        )}
        <Send form={form}>{WORDS.save}</Send>
      </form>
    </Page>
  );
}
