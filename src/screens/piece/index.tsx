import { LinkButton } from '../../parts/button';
import { EmptyState } from '../../parts/empty-state';
import { Page } from '../../parts/page';
import { linkTo } from '../../parts/route';
import { PLACE_WORDS } from '../../words/app';

const WORDS = PLACE_WORDS.piece;

/** One piece and its finish. */
export function Piece() {
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
