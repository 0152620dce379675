import { Page } from '../../parts/page';
import { linkTo } from '../../parts/route';
import { BOARD_WORDS } from '../../words/bench';

/** What dries, in digits for the whole shop. */
export function Board() {
  return (
    <Page title={BOARD_WORDS.title} backTo={linkTo('bench')}>
      {null}
    </Page>
  );
}
