import { useSignal } from '@preact/signals';
import { whenWords } from '../../../words/times';
import { useShop } from '../../frame/shop-context';
import { instantOf, NOW, type TimeChoice } from './time-choice';

/** The state of a time field: its props, and the instant it means at the moment of sending. */
export function useTime() {
  const { nowMs, needs } = useShop();
  const value = useSignal<TimeChoice>(NOW);
  const shownMs = instantOf(value.value, nowMs.value);
  return {
    field: {
      value: value.value,
      onChange: (choice: TimeChoice): void => {
        value.value = choice;
      },
      nowMs: nowMs.value,
      shown: shownMs === undefined ? undefined : whenWords(shownMs, nowMs.value),
    },
    /** Undefined while the clock is not filled in; read it when the button is tapped. */
    instantMs: (): number | undefined => instantOf(value.peek(), needs.now()),
  };
}
