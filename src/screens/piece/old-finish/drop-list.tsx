import type { OldFinishRecord } from '../../../logbook/fold/piece/old-finishes';
import { Icon } from '../../../parts/blocks/icons';
import { useShop } from '../../../parts/frame/shop-context';
import { undoWithToast } from '../../../parts/frame/undo';
import { OLD_WORDS as WORDS } from '../../../words/piece/old-finish';
import { whenWords } from '../../../words/times';
import { dropWords } from './drop-words';

/** The drops so far, the first first, each with its undo. */
export function DropList({ tests }: Pick<OldFinishRecord, 'tests'>) {
  const { actions, nowMs } = useShop();
  if (tests.length === 0) return null;
  return (
    <>
      <h3>{WORDS.tests}</h3>
      <ol class="history">
        {tests.map(({ id, solvent, dwell, reading, isTopOnly, atMs }) => {
          const name = WORDS.solvents[solvent];
          const what = dropWords({ dwell: dwell.typed, reading, ...(isTopOnly && { isTopOnly }) });
          return (
            <li key={id}>
              <div class="history-text">
                <p>
                  <strong>{name}</strong> <span class="quiet digits">{whenWords(atMs, nowMs.value)}</span>
                </p>
                <p class="small quiet">{what}</p>
              </div>
              <button
                type="button"
                class="undo"
                aria-label={WORDS.undo(`${name}, ${what}`)}
                onClick={() => void undoWithToast(actions, id, WORDS.event.drop(name))}
              >
                <Icon name="undo" />
              </button>
            </li>
          );
        })}
      </ol>
    </>
  );
}
