import { EmptyState } from '../../parts/empty-state';
import { Page } from '../../parts/page';
import { PLACE_WORDS } from '../../words/app';

const WORDS = PLACE_WORDS.air;

/** The air now, against the piece. */
export function Air() {
  return (
    <Page title={WORDS.title}>
      <EmptyState title={WORDS.empty} text={WORDS.text} />
    </Page>
  );
}
