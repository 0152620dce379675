import { Lazy, type LoadScreen } from '../frame/lazy';
import { useShop } from '../frame/shop-context';

const trouble: LoadScreen = async () => (await import('./storage-trouble')).StorageTrouble;
const unread: LoadScreen = async () => (await import('./storage-trouble')).UnreadEntries;

/** Speaks up on every screen while the logbook cannot be read, or something of it cannot be kept; its words come when they are needed. */
export function StorageNotice() {
  const { failure, held } = useShop();
  return failure.value || held.value ? <Lazy load={trouble} /> : null;
}

/** Says that something in the logbook could not be read. */
export const SetAsideNotice = () => (useShop().setAside.value.length > 0 ? <Lazy load={unread} /> : null);
