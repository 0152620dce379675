import { useSignal } from '@preact/signals';
import { weighCard } from '../../../actions/card/log-card';
import type { Said } from '../../../actions/log';
import { readTyped } from '../../../logbook/as-typed';
import { LIMITS } from '../../../logbook/limits';
import { CautionNotice, CautionRow } from '../../../parts/blocks/caution';
import { Section } from '../../../parts/blocks/page';
import { areWhole, Quantity, Send } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import { Tick } from '../../../parts/fields/tick';
import { TimeField } from '../../../parts/fields/time/time-field';
import { useTime } from '../../../parts/fields/time/use-time';
import type { Draft } from '../../../parts/fields/typed-field';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import type { TestCard } from '../../../shop/card/cards';
import { type OddWeight, oddWeight } from '../../../shop/card/odd-weight';
import { TOLD_WORDS, WARM_CAUTION, WEIGH_FORM as WORDS } from '../../../words/piece/card';
import { bareText } from './bare-text';
import { OddQuestion } from './odd-question';

type More = Partial<Pick<Said<'card-weighed'>, 'leftOut' | 'division' | 'mass'>>;

/** A weight is typed and logged with one tap; an odd one is asked about first. */
export function WeighForm({ card }: { readonly card: TestCard }) {
  const isUs = useUnits() === 'us';
  const { shop, cards, needs, actions } = useShop();
  const form = useForm();
  const time = useTime();
  const mass = useSignal<Draft<'g'>>({ text: '', unit: 'g' });
  const isWarm = useSignal(false);
  const warmth = useSignal<Draft<'C' | 'F'>>(isUs ? { text: '135', unit: 'F' } : { text: '57', unit: 'C' });
  const lasting = useSignal<Draft<'min' | 'h' | 'd'>>({ text: '24', unit: 'h' });
  const odd = useSignal<OddWeight | undefined>(undefined);
  const last = card.weighings.at(-1)?.mass.typed.text;

  async function log(more: More = {}): Promise<void> {
    const said = {
      card: card.id,
      mass: mass.value,
      ...(isWarm.value && { warm: { temperature: warmth.value, time: lasting.value } }),
      ...more,
    };
    const isWhole =
      areWhole([mass, LIMITS.mass]) &&
      (!isWarm.value || areWhole([warmth, LIMITS.temperature], [lasting, LIMITS.sheetTime]));
    const logged = await form.send(isWhole, () => weighCard(needs, said, time.instantMs() ?? Number.NaN));
    if (!logged) return;
    sayLogged(actions, logged.id, TOLD_WORDS.weighed, WORDS.logged(`${said.mass.text} g`));
  }

  function ask(event: Event): void {
    event.preventDefault();
    const read = readTyped(mass.value, LIMITS.mass);
    const outlook = cards.value.get(card.id);
    const told = outlook?.state === 'ready' && !isWarm.value ? outlook : undefined;
    const { text } = mass.value;
    odd.value = read.ok
      ? oddWeight(card, told, { text, massKg: read.value, atMs: time.instantMs() ?? needs.now() })
      : undefined;
    if (!odd.value) void log();
  }

  return (
    <Section title={WORDS.title}>
      <form class="stack" onSubmit={ask} noValidate>
        <Quantity
          label={WORDS.mass}
          hint={
            last === undefined
              ? WORDS.massFirst(`${bareText(card, shop.value)} g`)
              : WORDS.massHint(`${last} g`)
          }
          of={mass}
          limit={LIMITS.mass}
          form={form}
          at="mass"
        />
        <Tick
          label={WORDS.warm}
          hint={WORDS.warmHint}
          isTicked={isWarm.value}
          onTick={(is) => {
            isWarm.value = is;
          }}
        />
        {!isWarm.value && <CautionRow caution={WARM_CAUTION} />}
        {isWarm.value && (
          <>
            <CautionNotice caution={WARM_CAUTION} />
            <Quantity
              label={WORDS.temperature}
              of={warmth}
              limit={LIMITS.temperature}
              form={form}
              at="warm.temperature"
            />
            <Quantity label={WORDS.time} of={lasting} limit={LIMITS.sheetTime} form={form} at="warm.time" />
          </>
        )}
        <TimeField label={WORDS.when} {...time.field} problem={form.refused.value?.fields['at']} />
        {odd.value ? (
          <OddQuestion
            odd={odd.value}
            onAnswer={(more) => {
              odd.value = undefined;
              if (more) void log(more);
            }}
          />
        ) : (
          <Send form={form} icon="check">
            {WORDS.log}
          </Send>
        )}
      </form>
    </Section>
  );
}
