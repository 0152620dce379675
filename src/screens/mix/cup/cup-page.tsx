import { useSignal } from '@preact/signals';
import { parseNumber } from '../../../logbook/as-typed';
import { Page, Section } from '../../../parts/blocks/page';
import { NumberField } from '../../../parts/fields/number-field';
import { SelectField } from '../../../parts/fields/select-field';
import { linkTo } from '../../../parts/frame/route';
import { useUnits } from '../../../parts/frame/shop-context';
import { CUPS, type Cup, type CupId, cup } from '../../../science/viscosity/cups';
import { betweenCups, dynamicViscosityMPaS, readCup } from '../../../science/viscosity/efflux';
import { toKelvin } from '../../../units';
import { CUP_NAMES, CUP_WORDS as WORDS } from '../../../words/mix/tools';
import { numberWords, percentWords, temperatureWords } from '../../../words/quantities';
import { ThinnerToTime } from './thinner-to-time';

const USUAL_DENSITY_KG_M3 = 950;

/** A flow cup reading in mm2/s, the same in other cups, and the thinner to a wanted time. */
export function CupPage() {
  const chosen = useSignal<CupId>('iso-4mm');
  const text = useSignal('');
  const one = cup(chosen.value);
  const seconds = parseNumber(text.value);
  const problem = text.value.trim() !== '' && seconds === undefined ? WORDS.notSeconds : undefined;
  return (
    <Page title={WORDS.title} backTo={linkTo('mix')}>
      <Section title={WORDS.read}>
        <SelectField
          label={WORDS.cup}
          options={CUPS.map(({ id }) => ({ value: id, label: CUP_NAMES[id] }))}
          value={chosen.value}
          onChange={(id) => {
            chosen.value = id;
          }}
        />
        <NumberField
          label={WORDS.seconds}
          text={text.value}
          onText={(typed) => {
            text.value = typed;
          }}
          units={[{ value: 's', label: 's' }]}
          hint={WORDS.secondsHint(one.shortestS, one.longestS)}
          problem={problem ?? (seconds === undefined ? undefined : outside(one, seconds))}
        />
        {seconds !== undefined && <Reading one={one} seconds={seconds} />}
      </Section>
      {seconds !== undefined && readCup(one, seconds).ok && <OtherCups one={one} seconds={seconds} />}
      <ThinnerToTime one={one} />
    </Page>
  );
}

const outside = (one: Cup, seconds: number): string | undefined =>
  readCup(one, seconds).ok ? undefined : WORDS.outside(one.shortestS, one.longestS);

function Reading({ one, seconds }: { readonly one: Cup; readonly seconds: number }) {
  const units = useUnits();
  const read = readCup(one, seconds);
  if (!read.ok) return null;
  const isZahn = one.id.startsWith('zahn');
  return (
    <div role="status">
      <p class="outcome-figure digits">
        {WORDS.is(numberWords(read.value, read.value < 100 ? 1 : 0), units)}
      </p>
      <p class="digits">
        {WORDS.mPas(numberWords(dynamicViscosityMPaS(read.value, USUAL_DENSITY_KG_M3), 0), units)}{' '}
        {WORDS.atC(temperatureWords(toKelvin(one.temperatureC), units))}
      </p>
      {one.tableSpread !== undefined && <p class="quiet">{WORDS.spread(percentWords(one.tableSpread))}</p>}
      {isZahn && <p class="quiet">{WORDS.zahn}</p>}
    </div>
  );
}

function OtherCups({ one, seconds }: { readonly one: Cup; readonly seconds: number }) {
  const others = CUPS.filter(({ id }) => id !== one.id);
  return (
    <Section title={WORDS.others}>
      <table class="table">
        <thead>
          <tr>
            <th scope="col">{WORDS.otherCup}</th>
            <th scope="col">{WORDS.otherTime}</th>
          </tr>
        </thead>
        <tbody>
          {others.map((other) => (
            <tr key={other.id}>
              <th scope="row">{CUP_NAMES[other.id]}</th>
              <td class="digits">{timeIn(one, seconds, other)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Section>
  );
}

function timeIn(one: Cup, seconds: number, other: Cup): string {
  const time = betweenCups(one, seconds, other);
  if (time.ok) return `${numberWords(time.value, 0)} s`;
  return time.failure.kind === 'too-thin-for-cup' ? WORDS.tooThin : WORDS.tooThick;
}
