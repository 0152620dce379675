import { BACKUP_DUE } from '../../words/frame/backup';
import { LinkButton } from '../blocks/button';
import { Notice } from '../blocks/notice';
import { linkTo } from '../frame/route';
import { useShop } from '../frame/shop-context';
import { folderState, isBackupDue, isFolderDue, lastBackup } from './kept-here';

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
