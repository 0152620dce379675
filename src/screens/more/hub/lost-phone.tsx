import { Page, Section } from '../../../parts/blocks/page';
import { linkTo } from '../../../parts/frame/route';
import { HUB_LOST } from '../../../words/frame/hub-pages';
import { MayJoin } from './may-join';

/** What to do about a phone that was lost or stolen: shut it out, and then use another key. */
export const LostPhone = () => (
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
