import { EmptyState } from '../../parts/empty-state';
import { Page } from '../../parts/page';
import { PLACE_WORDS } from '../../words/app';

const WORDS = PLACE_WORDS.mix;

/** Recipes and jars. */
export function Mix() {
  return (
    <Page title={WORDS.title}>
      <EmptyState title={WORDS.empty} text={WORDS.text} />
    </Page>
  );
}
