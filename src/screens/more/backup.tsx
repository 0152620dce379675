import { useSignal } from '@preact/signals';
import { Button } from '../../parts/button';
import { Icon } from '../../parts/icons';
import { Notice } from '../../parts/notice';
import { Section } from '../../parts/page';
import { useShop } from '../../parts/shop-context';
import { showToast } from '../../parts/toast';
import { MORE_WORDS } from '../../words/more';

const WORDS = MORE_WORDS.backup;

/** Writes everything to a file, and takes in what such a file holds. */
export function Backup() {
  const { actions } = useShop();
  const problem = useSignal<string | undefined>(undefined);

  async function write(): Promise<void> {
    const { text, name } = await actions.exportBackup();
    download(text, name);
    showToast({ text: WORDS.written(name) });
  }

  async function read(file: File | undefined): Promise<void> {
    if (!file) return;
    problem.value = undefined;
    const text = await file.text().catch(() => undefined);
    if (text === undefined) {
      problem.value = WORDS.unreadable;
      return;
    }
    const taken = await actions.importBackup(text);
    if (taken.ok) showToast({ text: WORDS.taken(taken.value) });
    else problem.value = taken.failure.sentence;
  }

  return (
    <Section title={WORDS.title}>
      <p>{WORDS.text}</p>
      <div class="acts">
        <Button icon="share" onClick={() => void write()}>
          {WORDS.write}
        </Button>
        <FileButton onFile={(file) => void read(file)} />
      </div>
      {problem.value && (
        <Notice kind="stop" title={WORDS.refused} isNew>
          <p class="as-written">{problem.value}</p>
        </Notice>
      )}
    </Section>
  );
}

const FileButton = ({ onFile }: { readonly onFile: (file: File | undefined) => void }) => (
  <label class="button file-button">
    <Icon name="add" />
    <span>{WORDS.read}</span>
    <input
      type="file"
      accept="application/json,.json"
      onChange={(event) => {
        onFile(event.currentTarget.files?.[0]);
        event.currentTarget.value = ''; // so that the same file can be chosen again
      }}
    />
  </label>
);

function download(text: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser reads the file after the click has returned.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
