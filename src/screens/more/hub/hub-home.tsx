import { useSignal } from '@preact/signals';
import { namePhone } from '../../../actions/hub/name-phone';
import { Button, LinkButton } from '../../../parts/blocks/button';
import { Page, Section } from '../../../parts/blocks/page';
import { Refusal } from '../../../parts/fields/form/refusal';
import { useForm } from '../../../parts/fields/form/use-form';
import { TextField } from '../../../parts/fields/text-field';
import { Tick } from '../../../parts/fields/tick';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { hubHere, showOnly } from '../../../parts/kept/hub-here';
import { HubLine } from '../../../parts/kept/hub-line';
import { HUB_HERE } from '../../../words/frame/hub';
import { HUB_CODE, HUB_JOIN, HUB_LOST, HUB_SHOW, HUB_WORDS } from '../../../words/frame/hub-pages';
import { MayJoin } from './join-form';

/** Whether this phone is one of several, how it stands, and what can be done about it. */
export function HubHome() {
  const member = hubHere.value?.member;
  return (
    <Page title={HUB_HERE.title} backTo={linkTo('more')} backLabel={HUB_WORDS.toMore}>
      {member ? (
        <>
          <HubLine />
          <div class="acts">
            <LinkButton icon="add" kind="main" href={linkTo('more', 'hub', 'code')}>
              {HUB_CODE.open}
            </LinkButton>
          </div>
          <PhoneName phone={member.phone} />
          <ShowOnly />
          <Section title={HUB_LOST.title}>
            <div class="acts">
              <LinkButton href={linkTo('more', 'hub', 'lost')}>{HUB_LOST.open}</LinkButton>
              <LinkButton href={linkTo('more', 'hub', 'join')}>{HUB_JOIN.other}</LinkButton>
            </div>
          </Section>
        </>
      ) : (
        <>
          <p>{HUB_WORDS.lead}</p>
          <MayJoin />
        </>
      )}
    </Page>
  );
}

function PhoneName({ phone }: { readonly phone: string }) {
  const { shop, needs } = useShop();
  const form = useForm();
  const name = useSignal(shop.value.phones.get(phone) ?? '');
  async function save(event: Event): Promise<void> {
    event.preventDefault();
    const said = name.value.trim();
    if (await form.send(said !== '', () => namePhone(needs, phone, said)))
      showToast({ text: HUB_WORDS.named });
  }
  return (
    <Section title={HUB_WORDS.phoneName}>
      <form class="stack" noValidate onSubmit={(event) => void save(event)}>
        <TextField
          label={HUB_WORDS.phoneName}
          hint={HUB_WORDS.phoneNameHint}
          text={name.value}
          problem={
            form.isTried.value && name.value.trim() === ''
              ? HUB_WORDS.noName
              : form.refused.value?.fields['name']
          }
          onText={(typed) => {
            name.value = typed;
          }}
        />
        <Refusal refused={form.refused.value} />
        <div class="acts">
          <Button isSubmit>{HUB_WORDS.save}</Button>
        </div>
      </form>
    </Section>
  );
}

const ShowOnly = () => (
  <Section title={HUB_SHOW.title}>
    <Tick
      label={HUB_SHOW.label}
      hint={HUB_SHOW.hint}
      isTicked={showOnly.now.value === 'yes'}
      onTick={(isTicked) => showOnly.set(isTicked ? 'yes' : 'no')}
    />
    <div class="acts">
      <LinkButton icon="board" href={linkTo('board')}>
        {HUB_SHOW.open}
      </LinkButton>
    </div>
  </Section>
);
