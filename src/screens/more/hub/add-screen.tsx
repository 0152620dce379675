import { inFours, linkOf, writeCode } from '../../../hub/shop-code';
import { Button } from '../../../parts/blocks/button';
import { Notice } from '../../../parts/blocks/notice';
import { Page, Section } from '../../../parts/blocks/page';
import { QrCode } from '../../../parts/blocks/qr-code';
import { linkTo } from '../../../parts/frame/route';
import { showToast } from '../../../parts/frame/toast';
import { hubHere } from '../../../parts/kept/hub-here';
import { HUB_HERE } from '../../../words/frame/hub';
import { HUB_CODE } from '../../../words/frame/hub-pages';

/** The code with which another screen joins: to scan, to paste, to type. */
export function AddScreen() {
  const member = hubHere.value?.member;
  const code = member && writeCode(member);
  return (
    <Page title={HUB_CODE.title} backTo={linkTo('more', 'hub')}>
      {code ? <Code code={code} /> : <p>{HUB_HERE.none}</p>}
    </Page>
  );
}

function Code({ code }: { readonly code: string }) {
  const link = linkOf(location.href, code);
  async function copy(): Promise<void> {
    const isCopied = await navigator.clipboard.writeText(link).then(
      () => true,
      () => false,
    );
    showToast({ text: isCopied ? HUB_CODE.copied : HUB_CODE.notCopied });
  }
  return (
    <>
      <p>{HUB_CODE.lead}</p>
      <div class="shop-code">
        <QrCode text={link} describe={HUB_CODE.qr} />
      </div>
      <div class="acts">
        <Button icon="share" onClick={() => void copy()}>
          {HUB_CODE.copy}
        </Button>
      </div>
      <Section title={HUB_CODE.typed}>
        <p class="shop-code-signs digits">{inFours(code)}</p>
      </Section>
      <Notice kind="caution">
        <p>{HUB_CODE.caution}</p>
      </Notice>
    </>
  );
}
