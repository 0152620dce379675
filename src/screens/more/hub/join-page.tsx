import { useEffect } from 'preact/hooks';
import { Page } from '../../../parts/blocks/page';
import { linkTo, route } from '../../../parts/frame/route';
import { HUB_JOIN, HUB_WORDS } from '../../../words/frame/hub-pages';
import { MayJoin } from './may-join';

/** A phone that was sent here by a link or a code: what it is about to join. */
export function JoinPage() {
  const [, page = ''] = route.value.rest;
  const code = page === 'join' ? '' : page;
  useEffect(() => {
    // The code is not left lying in the history of the browser.
    if (code) history.replaceState(null, '', linkTo('more', 'hub', 'join'));
  }, [code]);
  return (
    <Page title={HUB_JOIN.title} backTo={linkTo('more', 'hub')} backLabel={HUB_WORDS.toMore}>
      <MayJoin code={code} />
    </Page>
  );
}
