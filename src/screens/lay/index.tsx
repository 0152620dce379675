import { LinkButton } from '../../parts/button';
import { EmptyState } from '../../parts/empty-state';
import { Page } from '../../parts/page';
import { linkTo } from '../../parts/route';
import { PLACE_WORDS } from '../../words/app';

const WORDS = PLACE_WORDS.lay;

/** Marks a coat. */
export function Lay() {
  return (
    <Page title={WORDS.title} backTo={linkTo('bench')}>
      <EmptyState title={WORDS.empty} text={WORDS.text}>
        <LinkButton kind="main" href={linkTo('bench')}>
          {WORDS.act}
        </LinkButton>
      </EmptyState>
    </Page>
  );
}
