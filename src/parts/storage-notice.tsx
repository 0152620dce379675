import type { OpenShop } from '../actions/shop';
import { STORAGE_WORDS } from '../words/more';
import { Button, LinkButton } from './button';
import { Notice } from './notice';
import { linkTo } from './route';

/** Speaks up when the logbook could not be read, or when something in it could not. */
export function StorageNotice({ open }: { readonly open: OpenShop }) {
  const failure = open.failure.value;
  const asideCount = open.setAside.value.length;
  if (failure)
    return (
      <Notice kind="stop" title={STORAGE_WORDS.failed} isNew>
        <p>{STORAGE_WORDS[failure.kind]}</p>
        <div class="acts">
          <Button onClick={() => void open.reopen()}>{STORAGE_WORDS.retry}</Button>
        </div>
      </Notice>
    );
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
