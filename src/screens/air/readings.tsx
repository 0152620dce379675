import { Button } from '../../parts/blocks/button';
import { EmptyState } from '../../parts/blocks/empty-state';
import { Icon } from '../../parts/blocks/icons';
import { Page, Section } from '../../parts/blocks/page';
import { linkTo } from '../../parts/frame/route';
import { sayOutcome } from '../../parts/frame/say-refused';
import { useShop, useUnits } from '../../parts/frame/shop-context';
import { LineChart } from '../../parts/time/line-chart';
import type { BlushLimits } from '../../science/air/blush';
import { ownBlush } from '../../shop/air/blush-seen';
import { type MeasuredAir, measuredAir } from '../../shop/air/measured-air';
import { DAY_MS, toKelvin } from '../../units';
import { AIR_WORDS, READINGS_WORDS as WORDS } from '../../words/air/air';
import { glued } from '../../words/glued';
import { CORRECT_WORDS } from '../../words/piece/coat/correct';
import { differenceWords, percentWords, temperatureWords, type UnitSystem } from '../../words/quantities';
import { clockWords, dateWords, whenWords } from '../../words/times';

const SHOWN = 30;
/** Where the time axis is named, as shares of its length: the ends would run off. */
const TICKS = [0.08, 0.5, 0.92];

/** The readings of the last time: the margin of the piece as a line, and each with its undo. */
export function Readings() {
  const { shop } = useShop();
  const airs = shop.value.airReadings.slice(-SHOWN).map((reading) => measuredAir(reading, shop.value));
  return (
    <Page title={WORDS.title} backTo={linkTo('air')} backLabel={AIR_WORDS.back}>
      {airs.length === 0 && <EmptyState title={AIR_WORDS.empty} text={AIR_WORDS.readFirst} />}
      {airs.length > 1 && <Margins airs={airs} limits={ownBlush(shop.value).limits} />}
      {airs.length > 0 && (
        <Section title={WORDS.each}>
          <ul class="plain-list">
            {airs.toReversed().map((air) => (
              <OneReading key={air.reading.id} air={air} />
            ))}
          </ul>
        </Section>
      )}
    </Page>
  );
}

function Margins({ airs, limits }: { readonly airs: readonly MeasuredAir[]; readonly limits: BlushLimits }) {
  const units = useUnits();
  const nowMs = useShop().nowMs.value;
  const inUnits = (kelvin: number): number => (units === 'us' ? kelvin * 1.8 : kelvin);
  const first = airs[0]?.reading.atMs ?? 0;
  const last = airs.at(-1)?.reading.atMs ?? first;
  const top = Math.max(limits.easyK + 2, ...airs.map(({ marginK }) => marginK));
  const low = Math.min(0, ...airs.map(({ marginK }) => marginK));
  const line = (key: string, label: string, kelvin: number) => ({
    key,
    label,
    dash: 'dashed' as const,
    points: [first, last].map((x) => ({ x, y: inUnits(kelvin) })),
  });
  const ticks = TICKS.map((share) => first + (last - first) * share);
  const tickWords = (at: number): string =>
    last - first < 2 * DAY_MS ? clockWords(at) : dateWords(at, nowMs);
  return (
    <LineChart
      describe={WORDS.describe(airs.length)}
      x={{
        label: WORDS.time,
        min: first,
        max: last,
        ticks: ticks.map((at) => ({ at, label: tickWords(at) })),
      }}
      y={{
        label: WORDS.margin,
        min: inUnits(low),
        max: inUnits(top),
        ticks: [0, limits.careK, limits.easyK].map((K) => ({
          at: inUnits(K),
          label: differenceWords(K, units),
        })),
      }}
      lines={[
        {
          key: 'margin',
          label: WORDS.margin,
          points: airs.map(({ reading, marginK }) => ({ x: reading.atMs, y: inUnits(marginK) })),
        },
        line('easy', WORDS.easy, limits.easyK),
        { ...line('care', WORDS.care, limits.careK), dash: 'dotted' },
      ]}
      table={{
        head: [WORDS.time, AIR_WORDS.airRow, AIR_WORDS.humidityRow, WORDS.margin],
        rows: airs.map((air) => [whenWords(air.reading.atMs, nowMs), ...numbersOf(air, units)]),
      }}
    />
  );
}

const numbersOf = ({ airC, humidity, marginK }: MeasuredAir, units: UnitSystem): [string, string, string] => [
  temperatureWords(toKelvin(airC), units),
  percentWords(humidity),
  differenceWords(marginK, units),
];

function OneReading({ air }: { readonly air: MeasuredAir }) {
  const { nowMs, actions } = useShop();
  const [degrees, humidity, margin] = numbersOf(air, useUnits());

  const what = `${whenWords(air.reading.atMs, nowMs.value)}: ${WORDS.line(degrees, humidity, margin)}`;

  async function undo(): Promise<void> {
    sayOutcome(await actions.undo(air.reading.id), ({ id }) => ({
      text: WORDS.undone,
      onUndo: () => void actions.undo(id),
    }));
  }

  return (
    <li class="digits">
      {glued(what)}
      <div class="row-acts">
        <Button kind="plain" icon="undo" onClick={() => void undo()}>
          {WORDS.undo}
        </Button>
        <a
          class="undo"
          aria-label={CORRECT_WORDS.leadLine(what)}
          href={linkTo('air', 'correct', air.reading.id)}
        >
          <Icon name="edit" />
        </a>
      </div>
    </li>
  );
}
