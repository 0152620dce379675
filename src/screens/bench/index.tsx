import { LinkButton } from '../../parts/button';
import { EmptyState } from '../../parts/empty-state';
import { Page } from '../../parts/page';
import { linkTo } from '../../parts/route';
import { PLACE_WORDS } from '../../words/app';

const WORDS = PLACE_WORDS.bench;

const EXAMPLE = {
  describe: WORDS.picture,
  woodLabel: WORDS.wood,
  layers: [1, 2, 3, 4].map((number) => ({
    key: String(number),
    label: WORDS.coat(number),
    dryUm: 12,
    solventUm: [1, 2, 4, 22][number - 1] ?? 0,
  })),
};

/** What may be touched now, next, and not yet. */
export function Bench() {
  return (
    <Page title={WORDS.title}>
      <EmptyState title={WORDS.empty} text={WORDS.text} picture={EXAMPLE}>
        <LinkButton kind="main" icon="add" href={linkTo('piece', 'new')}>
          {WORDS.act}
        </LinkButton>
      </EmptyState>
    </Page>
  );
}
