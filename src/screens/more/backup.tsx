import { useSignal } from '@preact/signals';
import { Button } from '../../parts/button';
import { Icon } from '../../parts/icons';
import { lastBackup, noteBackup, storagePromise } from '../../parts/kept-here';
import { Notice } from '../../parts/notice';
import { Section } from '../../parts/page';
import { useShop } from '../../parts/shop-context';
import { showToast } from '../../parts/toast';
import { handOverFile } from '../../reminders/hand-over';
import { MORE_WORDS } from '../../words/more';
import { whenWords } from '../../words/times';
import { BackupFolder } from './backup-folder';

const WORDS = MORE_WORDS.backup;

/** Writes everything to a file, and takes in what such a file holds. */
export function Backup() {
  const { actions, which, shop, nowMs } = useShop();
  const problem = useSignal<string | undefined>(undefined);
  const last = lastBackup();

  async function write(): Promise<void> {
    const file = await actions.exportBackup();
    const handed = await handOverFile(file);
    if (handed === 'given-up') return;
    if (which === 'own') noteBackup(nowMs.value, shop.value.entries.size);
    showToast({ text: WORDS.written(file.name) });
  }

  async function read(file: File | undefined): Promise<void> {
    if (!file) return;
    problem.value = undefined;
    const taken = await actions.importBackup(file);
    if (taken.ok) showToast({ text: WORDS.taken(taken.value) });
    else problem.value = taken.failure.sentence;
  }

  return (
    <Section title={WORDS.title}>
      <p>{WORDS.text}</p>
      <p class="quiet">{last.atMs > 0 ? WORDS.last(whenWords(last.atMs, nowMs.value)) : WORDS.none}</p>
      <div class="acts">
        <Button icon="share" onClick={() => void write()}>
          {WORDS.write}
        </Button>
        <FileButton onFile={read} />
      </div>
      {problem.value && (
        <Notice kind="stop" title={WORDS.refused} isNew>
          <p class="as-written">{problem.value}</p>
        </Notice>
      )}
      <p class="quiet small">{WORDS.promise[storagePromise.value]}</p>
      <BackupFolder />
    </Section>
  );
}

const FileButton = ({ onFile }: { readonly onFile: (file: File | undefined) => Promise<void> }) => (
  <label class="button file-button">
    <Icon name="add" />
    <span>{WORDS.read}</span>
    <input
      type="file"
      accept="application/zip,.zip,application/json,.json"
      onChange={({ currentTarget }) => {
        void onFile(currentTarget.files?.[0]);
        currentTarget.value = ''; // so that the same file can be chosen again
      }}
    />
  </label>
);
