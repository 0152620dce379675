import { useSignal } from '@preact/signals';
import { Button } from '../../parts/blocks/button';
import { Icon } from '../../parts/blocks/icons';
import { Notice } from '../../parts/blocks/notice';
import { Section } from '../../parts/blocks/page';
import { useShop } from '../../parts/frame/shop-context';
import { showToast } from '../../parts/frame/toast';
import { allowFolder, chooseFolder } from '../../parts/kept/backup-folder';
import { folderState, lastBackup, noteBackup, storagePromise } from '../../parts/kept/kept-here';
import { download, handOverFile } from '../../reminders/phone/hand-over';
import { MORE_WORDS } from '../../words/frame/more';
import { whenWords } from '../../words/times';

const WORDS = MORE_WORDS.backup;
const FOLDER = WORDS.folder;

/** Writes everything to a file, and takes in what such a file holds. */
export function Backup() {
  const { actions, which, shop, mended, nowMs } = useShop();
  const problem = useSignal<{ readonly title: string; readonly text: string } | undefined>(undefined);
  const unshared = useSignal<File | undefined>(undefined);
  const reading = useSignal<Reading | undefined>(undefined);
  const last = lastBackup();

  async function write(): Promise<void> {
    problem.value = undefined;
    unshared.value = undefined;
    const file = await actions.exportBackup().catch(() => undefined);
    if (!file) problem.value = { title: WORDS.unwritten, text: WORDS.unwrittenText };
    else if ((await handOverFile(file)) === 'given-up') unshared.value = file;
    else noteWritten(file);
  }

  function noteWritten({ name }: File): void {
    if (which === 'own') noteBackup(nowMs.value, shop.value.entries.size);
    showToast({ text: WORDS.written(name) });
  }

  function save(file: File): void {
    unshared.value = undefined;
    download(file);
    noteWritten(file);
  }

  async function read(file: File | undefined): Promise<void> {
    if (!file) return;
    problem.value = undefined;
    const stopping = new AbortController();
    const onProgress = (done: number, of: number): void => {
      reading.value = { done, of, stop: () => stopping.abort() };
    };
    onProgress(0, 0);
    const taken = await actions.importBackup(file, undefined, { onProgress, signal: stopping.signal });
    reading.value = undefined;
    if (!taken.ok) {
      problem.value = { title: WORDS.refused, text: taken.failure.sentence };
      return;
    }
    const { entries, photos, photosLeft, unread } = taken.value;
    showToast({ text: WORDS.taken(entries, photos, unread) });
    if (photosLeft > 0) problem.value = { title: WORDS.photosLeft, text: WORDS.photosLeftText(photosLeft) };
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
      {reading.value && <HowFar {...reading.value} />}
      {problem.value && (
        <Notice kind="stop" title={problem.value.title} isNew>
          <p class="as-written">{problem.value.text}</p>
        </Notice>
      )}
      {unshared.value && <Unshared file={unshared.value} onSave={save} />}
      <p class="quiet small">{WORDS.promise[storagePromise.value]}</p>
      {which === 'own' && mended.value && <p class="quiet small">{WORDS.second(mended.value.copied)}</p>}
      <BackupFolder />
    </Section>
  );
}

interface Reading {
  readonly done: number;
  /** 0 where it is not known yet. */
  readonly of: number;
  readonly stop: () => void;
}

/** How far the backup is read, and a way out. */
const HowFar = ({ done, of, stop }: Reading) => (
  <div class="stack" role="status">
    <label>
      {WORDS.reading}
      <progress {...(of > 0 && { value: done, max: of })} />
    </label>
    <div class="acts">
      <Button onClick={stop}>{WORDS.stop}</Button>
    </div>
  </div>
);

const Unshared = ({ file, onSave }: { readonly file: File; readonly onSave: (file: File) => void }) => (
  <Notice kind="note" title={WORDS.unwritten} isNew>
    <p>{WORDS.unshared}</p>
    <div class="acts">
      <Button onClick={() => onSave(file)}>{WORDS.save}</Button>
    </div>
  </Notice>
);

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

/** A folder into which backups are written by themselves, where the browser has such a thing. */
function BackupFolder() {
  const { which } = useShop();
  const state = folderState.value;
  if (state === 'unsupported' || which === 'demo') return null;
  const say = (isReady: boolean): void => showToast({ text: isReady ? FOLDER.ready : FOLDER.failed });
  return (
    <>
      <h3>{FOLDER.title}</h3>
      <p aria-live="polite">{FOLDER[state === 'none' ? 'text' : state]}</p>
      <div class="acts">
        {state === 'asks' && <Button onClick={() => void allowFolder().then(say)}>{FOLDER.allow}</Button>}
        <Button onClick={() => void chooseFolder().then(say)}>
          {state === 'none' ? FOLDER.choose : FOLDER.other}
        </Button>
      </div>
    </>
  );
}
