import type { MeasuredAir } from '../../logbook/air-now';
import { jarBlush, withMoreRetarder } from '../../logbook/jar-blush';
import { useShop, useUnits } from '../../parts/shop-context';
import type { BlushLimits } from '../../science/air/blush';
import { HELP_WORDS as WORDS } from '../../words/air';
import { percentWords } from '../../words/quantities';
import { gapWords } from './gap-words';
import { jarsInUse } from './jars-in-use';

const STEPS = [0.05, 0.1];

/** How much retarder, and what it does to the film's cooling; it is no answer below the floor. */
export function Retarder({ air, limits }: { readonly air: MeasuredAir; readonly limits: BlushLimits }) {
  const units = useUnits();
  const [jar] = jarsInUse(useShop().shop.value);
  const before = jar && jarBlush(jar, air);
  if (!jar || !before) return null;
  if (air.marginK < limits.floorK) return <p>{WORDS.retarderFloor}</p>;
  return (
    <>
      <h3>{WORDS.retarder}</h3>
      <ul class="plain-list">
        {STEPS.map((more) => {
          const after = jarBlush(withMoreRetarder(jar, more), air);
          const lessK = before.coolsToK - (after?.coolsToK ?? before.coolsToK);
          return <li key={more}>{WORDS.retarderStep(percentWords(more), gapWords(lessK, units))}</li>;
        })}
      </ul>
      <p class="quiet small">{WORDS.retarderUsual}</p>
    </>
  );
}
