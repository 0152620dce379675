import { useEffect } from 'preact/hooks';
import type { OpenShop } from '../../actions/shop';
import type { Held } from '../../logbook/logbook';
import { STORAGE_WORDS } from '../../words/frame/storage';
import { Button, LinkButton } from '../frame/button';
import { Notice } from '../frame/notice';
import { linkTo } from '../frame/route';
import { showToast } from '../frame/toast';

interface OfShop {
  readonly open: OpenShop;
}

/** Speaks up on every screen while the logbook cannot be read, or something of it cannot be kept. */
export function StorageNotice({ open }: OfShop) {
  const failure = open.failure.value;
  const held = open.held.value;
  if (held) return <HeldNotice open={open} held={held} />;
  if (!failure) return null;
  return (
    <Notice kind="stop" title={STORAGE_WORDS.failed} isNew>
      <p>{STORAGE_WORDS[failure.kind]}</p>
      <div class="acts">
        <Button onClick={() => void open.reopen()}>{STORAGE_WORDS.retry}</Button>
      </div>
    </Notice>
  );
}

function HeldNotice({ open, held }: OfShop & { readonly held: Held }) {
  const { actions, needs } = open;
  useEffect(() => {
    const warn = (event: Event): void => event.preventDefault();
    addEventListener('beforeunload', warn);
    return () => removeEventListener('beforeunload', warn);
  }, []);
  async function save(): Promise<void> {
    const { download } = await import('../../reminders/phone/hand-over');
    download(await actions.exportBackup());
  }
  async function retry(): Promise<void> {
    const kept = await needs.logbook.keepHeld();
    if (kept.ok) showToast({ text: STORAGE_WORDS.kept });
  }
  return (
    <Notice kind="stop" title={STORAGE_WORDS.held(held.entries.length)} isNew>
      <p>
        {STORAGE_WORDS.heldWhy[held.failure.kind]} {STORAGE_WORDS.heldText}
      </p>
      <div class="acts">
        <Button icon="share" onClick={() => void save()}>
          {STORAGE_WORDS.heldSave}
        </Button>
        <Button onClick={() => void retry()}>{STORAGE_WORDS.retry}</Button>
      </div>
    </Notice>
  );
}

/** Says that something in the logbook could not be read, and leads to it. */
export function SetAsideNotice({ open }: OfShop) {
  const asideCount = open.setAside.value.length;
  if (asideCount === 0) return null;
  return (
    <Notice kind="note" title={STORAGE_WORDS.aside(asideCount)}>
      <p>{STORAGE_WORDS.asideText}</p>
      <div class="acts">
        <LinkButton href={linkTo('more')}>{STORAGE_WORDS.show}</LinkButton>
      </div>
    </Notice>
  );
}
