import type { StorageFailure } from '../../logbook/storage/storage-failure';
import { demoShop } from '../../shop/demo/demo-shop';
import type { ActionNeeds } from '../log';
import { drawDemoPhotos } from './demo-photos';

/** Fills the demo shop; its pictures follow, and where none can be drawn it goes without. */
export async function fillDemo({
  logbook,
  now,
  zone,
  newId,
}: ActionNeeds): Promise<StorageFailure | undefined> {
  const entries = demoShop({ nowMs: now(), zone: zone(), newId });
  const filled = await logbook.take({ entries, setAside: [] });
  if (!filled.ok) return filled.failure;
  void drawDemoPhotos(entries).catch(() => undefined);
  return undefined;
}
