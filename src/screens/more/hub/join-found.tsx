import { useSignal } from '@preact/signals';
import type { HubTrouble } from '../../../hub/hub-failure';
import { Button } from '../../../parts/blocks/button';
import { Notice } from '../../../parts/blocks/notice';
import { Section } from '../../../parts/blocks/page';
import { leadToProblem } from '../../../parts/fields/form/use-form';
import { TextField } from '../../../parts/fields/text-field';
import { isWide } from '../../../parts/frame/beside';
import { fromHere, linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { hubHere, join } from '../../../parts/kept/hub-here';
import { HUB_TROUBLE } from '../../../words/frame/hub';
import { HUB_JOIN, HUB_WORDS } from '../../../words/frame/hub-pages';

interface Code {
  readonly password: string;
  readonly secret: string;
}
/** What a code leads to: a hub on which a shop begins, or a shop with so many entries. */
export type FoundShop = Code & ({ readonly how: 'begin' } | { readonly how: 'join'; readonly there: number });

/** What this phone is about to join, what is merged, and a yes. */
export function JoinFound({ found, onCancel }: { readonly found: FoundShop; readonly onCancel: () => void }) {
  const open = useShop();
  const member = hubHere.value?.member;
  const called = member && open.shop.value.phones.get(member.phone);
  const name = useSignal<string>(called ?? HUB_WORDS.usualName[isWide.value ? 'tablet' : 'phone']);
  const isBusy = useSignal(false);
  const isTried = useSignal(false);
  const trouble = useSignal<HubTrouble | 'not-fetched' | undefined>(undefined);
  const here = open.shop.value.entries.size;
  const words = found.how === 'begin' ? HUB_JOIN.begin : HUB_JOIN.join;

  async function say(event: Event): Promise<void> {
    event.preventDefault();
    isTried.value = true;
    const said = name.value.trim();
    if (said === '') return leadToProblem();
    if (isBusy.value) return;
    isBusy.value = true;
    const goOn = fromHere();
    const { password, secret, how } = found;
    const done = await join(open, { password, secret }, said, how).catch(() => undefined);
    isBusy.value = false;
    trouble.value = done ? (done.ok ? undefined : done.failure) : 'not-fetched';
    if (!done?.ok) return;
    showToast({ text: how === 'begin' ? HUB_JOIN.begun : HUB_JOIN.joined });
    goOn(linkTo('more', 'hub', ...(how === 'begin' ? ['code'] : [])));
  }

  const isMerge = found.how === 'join' && here > 0 && found.there > 0;
  return (
    <Section title={words.title}>
      <form class="stack" noValidate onSubmit={(event) => void say(event)}>
        <p>{found.how === 'begin' ? HUB_JOIN.begin.text(here) : HUB_JOIN.join.text(found.there, here)}</p>
        {member && member.secret !== found.secret && <p>{HUB_JOIN.again}</p>}
        <TextField
          label={HUB_WORDS.phoneName}
          hint={HUB_WORDS.phoneNameHint}
          text={name.value}
          problem={isTried.value && name.value.trim() === '' ? HUB_WORDS.noName : undefined}
          onText={(typed) => {
            name.value = typed;
          }}
        />
        {trouble.value && (
          <Notice kind="stop" isNew>
            <p>{trouble.value === 'not-fetched' ? HUB_JOIN.notFetched : HUB_TROUBLE[trouble.value]}</p>
          </Notice>
        )}
        <Button kind="main" isWide isSubmit disabled={isBusy.value}>
          {isMerge ? HUB_JOIN.join.actMerge : words.act}
        </Button>
        <Button isWide onClick={onCancel}>
          {HUB_JOIN.cancel}
        </Button>
      </form>
    </Section>
  );
}
