import { type ReadonlySignal, signal } from '@preact/signals';
import { type OpenShop, openShop, type WhichShop } from '../../actions/shop';
import { remembered } from '../kept/remembered';
import { beforeDrawing } from './draw-once';
import { goTo, readAfresh } from './route';
import type { ShopDoor } from './shop-context';
import { showToast } from './toast';

const isShop = (text: string): text is WhichShop => text === 'own' || text === 'demo';
const lastShop = remembered<WhichShop>('coatwait-shop', 'own', isShop);

/** The shop that was on screen last, opened, and the way to the other one. Called once, by the door. */
export function openDoor(): ReadonlySignal<ShopDoor | undefined> {
  const door = signal<ShopDoor | undefined>(undefined);
  let stopLooking = (): void => undefined;

  async function show(name: WhichShop): Promise<void> {
    const open = await openShop(name, { beforeDrawing });
    lastShop.set(name);
    door.value = { name, open, enter: (next) => void change(open, next) };
    if (name === 'demo') return;
    const { guardLogbook } = await import('../kept/guard-logbook'); // after the first screen
    if (door.value.open === open) stopLooking = guardLogbook(open);
  }

  async function change(from: OpenShop, to: WhichShop): Promise<void> {
    stopLooking();
    if (from.which === 'demo') {
      const left = await from.leave();
      if (!left.ok) showToast({ text: left.failure.sentence });
    } else from.close();
    await show(to);
    readAfresh();
    goTo('bench');
  }

  void show(lastShop.now.value);
  return door;
}
