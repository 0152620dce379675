import { Lazy, type LoadScreen } from '../frame/lazy';
import { useShop } from '../frame/shop-context';

const trouble: LoadScreen = async () => (await import('./storage-trouble')).StorageTrouble;
const unread: LoadScreen = async () => (await import('./storage-trouble')).UnreadEntries;

/**
 * Speaks up on every screen while the logbook cannot be read, something of it cannot be kept, something was lost and comes back, or the
 * clock cannot be right. What can speak comes behind the first screen, once the second copy was asked.
 */
export function StorageNotice() {
  const { failure, held, mended, puttingBack } = useShop();
  const isAsked = puttingBack.value !== undefined; // what may have to be said is fetched meanwhile
  return failure.value || held.value || mended.value || isAsked ? <Lazy load={trouble} /> : null;
}

/** Says that something in the logbook could not be read. */
export const SetAsideNotice = () => (useShop().setAside.value.length > 0 ? <Lazy load={unread} /> : null);
