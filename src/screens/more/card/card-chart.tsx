import { useShop } from '../../../parts/frame/shop-context';
import { LineChart } from '../../../parts/time/line-chart';
import { roundTicks, timeTicks } from '../../../parts/time/since-axis';
import { counted, type TestCard } from '../../../shop/card/cards';
import type { TimedReading } from '../../../shop/card/next-weighing';
import { TOLD_WORDS as WORDS } from '../../../words/piece/card';
import { SINCE_WORDS } from '../../../words/piece/since';
import { numberWords, percentWords } from '../../../words/quantities';

interface CardChartProps {
  readonly card: TestCard;
  readonly told: TimedReading;
}

const G_PER_KG = 1000;

/** What the card is to weigh from an hour after its last coat on, with its band, and what it weighed. */
export function CardChart({ card, told: { reading, startMs } }: CardChartProps) {
  const { nowMs } = useShop();
  const { expected, weighedKg } = reading;
  const lastMs = card.coats.at(-1)?.atMs ?? startMs;
  const lastS = (lastMs - startMs) / 1000;
  const along = (atS: number): number => Math.log10(Math.max(atS - lastS, 1));
  const dots = counted(card).flatMap(({ atMs }, i) => {
    const y = (weighedKg[i] ?? 0) * G_PER_KG;
    return atMs > lastMs ? [{ x: along((atMs - startMs) / 1000), y }] : [];
  });
  const points = expected.map(({ atS, likelyKg, lowKg, highKg }) => ({
    x: along(atS),
    y: likelyKg * G_PER_KG,
    low: lowKg * G_PER_KG,
    high: highKg * G_PER_KG,
  }));
  const [first, end] = [points[0]?.x ?? 0, points.at(-1)?.x ?? 1];
  const heights = [...points.flatMap(({ low, high }) => [low, high]), ...dots.map(({ y }) => y)];
  const [min, max] = [Math.min(...heights), Math.max(...heights)];
  const decimals = Math.max(0, Math.min(3, Math.ceil(-Math.log10((max - min) / 4))));
  const show = (grams: number): string => numberWords(grams, 3);
  const ticks = timeTicks(first, end);
  const now = along((nowMs.value - startMs) / 1000);
  const nearest = (x: number) =>
    points.reduce((best, one) => (Math.abs(one.x - x) < Math.abs(best.x - x) ? one : best));
  const { time, low, likely, high } = WORDS.columns;
  return (
    <>
      <LineChart
        describe={WORDS.describe(show(nearest(now).y))}
        x={{ label: SINCE_WORDS.since, min: first, max: end, ticks }}
        y={{
          label: WORDS.grams,
          min,
          max,
          ticks: roundTicks(min, max, (grams) => numberWords(grams, decimals)),
        }}
        lines={[{ key: 'likely', label: WORDS.line, points }]}
        band={points}
        dots={dots}
        marks={now > first && now < end ? [{ x: now, label: SINCE_WORDS.now }] : []}
        table={{
          head: [time, `${low}, ${WORDS.grams}`, likely, high],
          rows: ticks.map(({ at, label }) => {
            const one = nearest(at);
            return [label, show(one.low), show(one.y), show(one.high)];
          }),
        }}
      />
      <p class="quiet small">{WORDS.humidity(percentWords(reading.humidity))}</p>
    </>
  );
}
