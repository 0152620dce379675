import { useSignal } from '@preact/signals';
import { type RetarderCost, retarderCost } from '../../../actions/air/retarder-cost';
import { finishTraits } from '../../../estimator/finishes/traits';
import type { Shop } from '../../../logbook/fold/fold';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { Button } from '../../../parts/blocks/button';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import type { BlushLimits } from '../../../science/air/blush';
import { jarBlush, withMoreRetarder } from '../../../shop/air/jar-blush';
import type { MeasuredAir } from '../../../shop/air/measured-air';
import { HELP_WORDS as WORDS } from '../../../words/air/air';
import { differenceWords, percentWords } from '../../../words/quantities';
import { spanWords } from '../../../words/times';
import { jarsInUse } from './jars-in-use';

const STEPS = [0.05, 0.1];
const ASKED = 0.05;

/** How much retarder, and what it does to the film's cooling; it is no answer below the floor. */
export function Retarder({ air, limits }: { readonly air: MeasuredAir; readonly limits: BlushLimits }) {
  const units = useUnits();
  const shop = useShop().shop.value;
  const [jar] = jarsInUse(shop);
  const before = jar && jarBlush(jar, air);
  if (!jar || !before || !finishTraits(jar.product.finish).takesRetarder) return null;
  if (air.marginK < limits.floorK) return <p>{WORDS.retarderFloor}</p>;
  const piece = pieceFrom(jar.id, shop);
  return (
    <>
      <h3>{WORDS.retarder}</h3>
      <ul class="plain-list">
        {STEPS.map((more) => {
          const after = jarBlush(withMoreRetarder(jar, more), air);
          const lessK = before.coolsToK - (after?.coolsToK ?? before.coolsToK);
          return <li key={more}>{WORDS.retarderStep(percentWords(more), differenceWords(lessK, units))}</li>;
        })}
      </ul>
      {piece && <Cost key={piece.id} piece={piece} />}
      <p class="quiet small">{WORDS.retarderUsual}</p>
    </>
  );
}

/** The open piece whose newest coat came from this jar. */
const pieceFrom = (jar: string, { pieces }: Shop): Piece | undefined =>
  [...pieces.values()]
    .filter(({ closedMs, coats }) => closedMs === undefined && coats.at(-1)?.jar === jar)
    .sort((one, other) => (other.coats.at(-1)?.atMs ?? 0) - (one.coats.at(-1)?.atMs ?? 0))[0];

/** What it costs in days, worked out on a piece when asked for. */
function Cost({ piece }: { readonly piece: Piece }) {
  const { shop, nowMs, estimator } = useShop();
  const cost = useSignal<RetarderCost | 'working' | 'failed' | undefined>(undefined);

  async function ask(): Promise<void> {
    cost.value = 'working';
    try {
      cost.value = (await retarderCost(piece, shop.value, nowMs.value, ASKED, await estimator)) ?? 'failed';
    } catch {
      cost.value = 'failed'; // the worker was lost; the button stands again
    }
  }

  const known = cost.value;
  if (known === 'working') return <p role="status">{WORDS.retarderWorking}</p>;
  if (known !== undefined && known !== 'failed')
    return (
      <p role="status">
        {WORDS.retarderCost(piece.name, percentWords(ASKED), later(known.levelS), later(known.rubOutS))}
      </p>
    );
  return (
    <>
      {known === 'failed' && <p role="status">{WORDS.retarderFailed}</p>}
      <div class="acts">
        <Button onClick={() => void ask()}>{WORDS.retarderAsk}</Button>
      </div>
    </>
  );
}

const later = (seconds: number): string =>
  Number.isFinite(seconds) ? spanWords(Math.max(0, seconds) * 1000) : WORDS.retarderFar;
