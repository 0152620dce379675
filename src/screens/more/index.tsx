import { EmptyState } from '../../parts/empty-state';
import { Page } from '../../parts/page';
import { PLACE_WORDS } from '../../words/app';

const WORDS = PLACE_WORDS.more;

/** Settings, backup, the demo shop. */
export function More() {
  return (
    <Page title={WORDS.title}>
      <EmptyState title={WORDS.empty} text={WORDS.text} />
    </Page>
  );
}
