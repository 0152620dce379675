import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { OpenShop, WhichShop } from '../../actions/shop';
import type { UnitSystem } from '../../words/quantities';

/** The shop on screen, and the door to the other one. */
export interface ShopDoor {
  readonly name: WhichShop;
  readonly open: OpenShop;
  /** Goes into the demo shop, or out of it; the demo is cleared on leaving. */
  readonly enter: (name: WhichShop) => void;
}

/** Given by the app to every screen. */
export const ShopContext = createContext<ShopDoor | undefined>(undefined);

/** The door of the shop on screen. */
export function useDoor(): ShopDoor {
  const door = useContext(ShopContext);
  if (!door) throw new Error('A screen was shown before its shop was open.');
  return door;
}

/** The shop on screen: its signals, and what a person can do in it. */
export const useShop = (): OpenShop => useDoor().open;

/** The units chosen in this shop; metric until one is chosen. */
export const useUnits = (): UnitSystem => useShop().shop.value.settings.units ?? 'metric';
