import { LinkButton } from '../../parts/blocks/button';
import { EmptyState } from '../../parts/blocks/empty-state';
import { Page } from '../../parts/blocks/page';
import { linkTo } from '../../parts/frame/route';
import { MIX_WORDS } from '../../words/mix/mix';

/** An address that leads to nothing in this shop. */
export function NothingHere({ title }: { readonly title: string }) {
  return (
    <Page title={title} backTo={linkTo('mix')}>
      <EmptyState title={MIX_WORDS.noSuch} text={MIX_WORDS.noSuchText}>
        <LinkButton kind="main" href={linkTo('mix')}>
          {MIX_WORDS.toMix}
        </LinkButton>
      </EmptyState>
    </Page>
  );
}
