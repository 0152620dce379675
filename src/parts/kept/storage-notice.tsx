import { BACKUP_DUE } from '../../words/frame/backup';
import { LinkButton } from '../blocks/button';
import { Notice } from '../blocks/notice';
import { Lazy, type LoadScreen } from '../frame/lazy';
import { linkTo } from '../frame/route';
import { useShop } from '../frame/shop-context';
import { folderState, isBackupDue, isFolderDue, lastBackup } from './kept-here';

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

/** Says that a backup is old, where much was logged since, or that its folder cannot be written to; never in the demo. */
export function BackupNotice() {
  const { which, shop, nowMs } = useShop();
  const folder = folderState.value;
  const isStuck = (folder === 'asks' || folder === 'gone') && isFolderDue(shop.value, nowMs.value);
  if (which === 'demo' || !(isStuck || isBackupDue(shop.value, nowMs.value))) return null;
  return (
    <Notice kind="note" title={isStuck ? BACKUP_DUE.folder : BACKUP_DUE.title}>
      <p>{BACKUP_DUE.text(shop.value.entries.size - lastBackup().entries)}</p>
      <div class="acts">
        <LinkButton href={linkTo('more')}>{BACKUP_DUE.act}</LinkButton>
      </div>
    </Notice>
  );
}
