import { EmptyState } from '../../parts/empty-state';
import { Page } from '../../parts/page';
import { PLACE_WORDS } from '../../words/app';

const WORDS = PLACE_WORDS.match;

/** A target, its trials, and what to add next. */
export function Match() {
  return (
    <Page title={WORDS.title}>
      <EmptyState title={WORDS.empty} text={WORDS.text} />
    </Page>
  );
}
