import { Button } from '../../parts/blocks/button';
import { useShop } from '../../parts/frame/shop-context';
import { showToast } from '../../parts/frame/toast';
import { allowFolder, chooseFolder } from '../../parts/kept/backup-folder';
import { folderState } from '../../parts/kept/kept-here';
import { MORE_WORDS } from '../../words/frame/more';

const WORDS = MORE_WORDS.backup.folder;

/** A folder into which backups are written by themselves, where the browser has such a thing. */
export function BackupFolder() {
  const { which } = useShop();
  const state = folderState.value;
  if (state === 'unsupported' || which === 'demo') return null;
  const say = (isReady: boolean): void => showToast({ text: isReady ? WORDS.ready : WORDS.failed });
  return (
    <>
      <h3>{WORDS.title}</h3>
      <p aria-live="polite">{WORDS[state === 'none' ? 'text' : state]}</p>
      <div class="acts">
        {state === 'asks' && <Button onClick={() => void allowFolder().then(say)}>{WORDS.allow}</Button>}
        <Button onClick={() => void chooseFolder().then(say)}>
          {state === 'none' ? WORDS.choose : WORDS.other}
        </Button>
      </div>
    </>
  );
}
