import type { OpenShop } from '../actions/shop';
import { STORAGE_WORDS } from '../words/storage';
import { Button, LinkButton } from './button';
import { Notice } from './notice';
import { linkTo } from './route';

interface OfShop {
  readonly open: OpenShop;
}

/** Speaks up on every screen while the logbook cannot be read. */
export function StorageNotice({ open }: OfShop) {
  const failure = open.failure.value;
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
