import { chooseFolder, folderState } from '../../parts/backup-folder';
import { Button } from '../../parts/button';
import { useShop } from '../../parts/shop-context';
import { showToast } from '../../parts/toast';
import { MORE_WORDS } from '../../words/more';

const WORDS = MORE_WORDS.backup.folder;

/** A folder into which backups are written by themselves, where the browser has such a thing. */
export function BackupFolder() {
  const { which } = useShop();
  const state = folderState.value;
  if (state === 'unsupported' || which === 'demo') return null;
  async function choose(): Promise<void> {
    showToast({ text: (await chooseFolder()) ? WORDS.ready : WORDS.failed });
  }
  return (
    <>
      <h3>{WORDS.title}</h3>
      <p>{state === 'ready' ? WORDS.ready : state === 'asks' ? WORDS.asks : WORDS.text}</p>
      <div class="acts">
        <Button onClick={() => void choose()}>
          {state === 'asks' ? WORDS.allow : state === 'ready' ? WORDS.other : WORDS.choose}
        </Button>
      </div>
    </>
  );
}
