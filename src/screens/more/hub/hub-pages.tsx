import { useEffect } from 'preact/hooks';
import { Page, Section } from '../../../parts/blocks/page';
import { linkTo, route } from '../../../parts/frame/route';
import { HUB_JOIN, HUB_LOST, HUB_WORDS } from '../../../words/frame/hub-pages';
import { AddScreen } from './add-screen';
import { HubHome } from './hub-home';
import { MayJoin } from './join-form';

/** The hub and what joins it. Whatever else stands behind it in the address is a code to join with. */
export function HubPages() {
  const [, page = ''] = route.value.rest;
  if (page === '') return <HubHome />;
  if (page === 'code') return <AddScreen />;
  return page === 'lost' ? <LostPhone /> : <JoinPage />;
}

/** What to do about a phone that was lost or stolen: shut it out, and then use another key. */
const LostPhone = () => (
  <Page title={HUB_LOST.title} backTo={linkTo('more', 'hub')}>
    <p>{HUB_LOST.lead}</p>
    <Section title={HUB_LOST.one}>
      <p>{HUB_LOST.oneText}</p>
      <p>
        <code>{HUB_LOST.command}</code>
      </p>
      <p>{HUB_LOST.oneAfter}</p>
    </Section>
    <Section title={HUB_LOST.two}>
      <p>{HUB_LOST.twoText}</p>
      <MayJoin />
    </Section>
  </Page>
);

/** A phone that was sent here by a link or a code: what it is about to join. */
function JoinPage() {
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
