import { Notice } from '../../../parts/blocks/notice';
import { useShop } from '../../../parts/frame/shop-context';
import { HUB_WORDS } from '../../../words/frame/hub-pages';
import { JoinForm } from './join-form';

/** The way into a shop; or why there is none from here. */
export function MayJoin({ code }: { readonly code?: string }) {
  const { which } = useShop();
  if (which === 'demo' || !isSecureContext)
    return (
      <Notice kind="note">
        <p>{which === 'demo' ? HUB_WORDS.demo : HUB_WORDS.notSecure}</p>
      </Notice>
    );
  return <JoinForm code={code} />;
}
