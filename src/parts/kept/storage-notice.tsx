import { useComputed } from '@preact/signals';
import { isClockBehind } from '../../logbook/clock';
import { Lazy, type LoadScreen } from '../frame/lazy';
import { useShop } from '../frame/shop-context';

const trouble: LoadScreen = async () => (await import('./storage-trouble')).StorageTrouble;
const unread: LoadScreen = async () => (await import('./storage-trouble')).UnreadEntries;

/**
 * Speaks up on every screen while the logbook cannot be read, something of it cannot be kept, something was lost and is back, or the clock
 * cannot be right; its words come when they are needed.
 */
export function StorageNotice() {
  const { failure, held, mended, shop, nowMs } = useShop();
  const isWrong = useComputed(() => isClockBehind(shop.value, nowMs.value)); // not drawn again at every tick
  const isMended = mended.value?.isAlone || mended.value?.count;
  return failure.value || held.value || isMended || isWrong.value ? <Lazy load={trouble} /> : null;
}

/** Says that something in the logbook could not be read. */
export const SetAsideNotice = () => (useShop().setAside.value.length > 0 ? <Lazy load={unread} /> : null);
