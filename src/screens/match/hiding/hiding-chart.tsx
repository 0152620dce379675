import { useUnits } from '../../../parts/frame/shop-context';
import { LineChart } from '../../../parts/time/line-chart';
import { HIDING_CONTRAST_RATIO } from '../../../science/pigment/hiding';
import type { Hiding } from '../../../shop/colour/hides';
import { umToMetres, umToMil } from '../../../units';
import { HIDING_WORDS as WORDS } from '../../../words/match/tools';
import { filmWords, numberWords } from '../../../words/quantities';

const STEPS = 24;
const LOWEST_RATIO = 0.5;

/** Contrast ratio against film build. */
export function HidingChart({ hiding }: { readonly hiding: Hiding }) {
  const units = useUnits();
  const { filmToHideUm } = hiding;
  const endUm = Math.ceil((1.4 * (filmToHideUm ?? 200)) / 20) * 20;
  const points = Array.from({ length: STEPS }, (_, i) => {
    const x = ((i + 1) / STEPS) * endUm;
    return { x, y: Math.max(hiding.at(x), LOWEST_RATIO) };
  });
  const hidesAt = filmToHideUm === undefined ? undefined : filmWords(umToMetres(filmToHideUm), units);
  const tick = (at: number) => ({ at, label: numberWords(at, 2) });
  const inUnits = (um: number): number => (units === 'us' ? umToMil(um) : um);
  const filmTick = (at: number) => ({ at, label: numberWords(inUnits(at), units === 'us' ? 1 : 0) });
  const filmAxis = WORDS.filmAxis[units];
  return (
    <LineChart
      describe={hidesAt === undefined ? WORDS.chartNever : WORDS.chart(hidesAt)}
      x={{ label: filmAxis, min: 0, max: endUm, ticks: [0, endUm / 2, endUm].map(filmTick) }}
      y={{
        label: WORDS.ratioAxis,
        min: LOWEST_RATIO,
        max: 1,
        ticks: [LOWEST_RATIO, 0.75, HIDING_CONTRAST_RATIO].map(tick),
      }}
      lines={[{ key: 'ratio', label: WORDS.ratioAxis, points }]}
      marks={filmToHideUm === undefined || hidesAt === undefined ? [] : [{ x: filmToHideUm, label: hidesAt }]}
      table={{
        head: [filmAxis, WORDS.ratioAxis],
        rows: points.filter((_, i) => i % 4 === 3).map(({ x, y }) => [filmTick(x).label, y.toFixed(3)]),
      }}
    />
  );
}
