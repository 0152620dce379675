import { useSignal } from '@preact/signals';
import { coatCard } from '../../../actions/card/log-card';
import { LIMITS } from '../../../logbook/limits';
import { Section } from '../../../parts/blocks/page';
import { FewFirst } from '../../../parts/fields/few-first';
import { areWhole, Quantity, Send } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import { named } from '../../../parts/fields/select-field';
import { TimeField } from '../../../parts/fields/time/time-field';
import { useTime } from '../../../parts/fields/time/use-time';
import type { Draft } from '../../../parts/fields/typed-field';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import type { TestCard } from '../../../shop/card/cards';
import { USUAL_COAT } from '../../../shop/stack/usual-coat';
import { COAT_ALONE as WORDS } from '../../../words/piece/card';
import { LAY_WORDS } from '../../../words/piece/coat/lay';

/** A coat on a card that lies beside no piece: from which jar, how much, and when. */
export function CoatAlone({ card }: { readonly card: TestCard }) {
  const units = useUnits();
  const { shop, needs, actions } = useShop();
  const jars = [...shop.value.jars.values()].filter(({ emptiedMs }) => emptiedMs === undefined).reverse();
  const last = card.coats.at(-1);
  const form = useForm();
  const time = useTime();
  const jar = useSignal(last?.jar ?? jars[0]?.id);
  const wetFilm = useSignal<Draft<'um' | 'mil'>>(USUAL_COAT[units]);

  async function send(event: Event): Promise<void> {
    event.preventDefault();
    const from = jar.value ?? '';
    const how = last?.how ?? 'spray';
    const film = { by: 'wet', wetFilm: wetFilm.value } as const;
    const logged = await form.send(areWhole([wetFilm, LIMITS.wetFilm]), () =>
      coatCard(needs, { card: card.id, jar: from, how, film }, time.instantMs() ?? Number.NaN),
    );
    if (logged) sayLogged(actions, logged.id, WORDS.coat, WORDS.logged);
  }

  return (
    <Section title={WORDS.title}>
      <form class="stack" onSubmit={(event) => void send(event)} noValidate>
        <div class="wide-tiles">
          <FewFirst
            label={LAY_WORDS.jar}
            allWords={LAY_WORDS.allJars}
            options={named(jars)}
            value={jar.value}
            onChange={(id) => {
              jar.value = id;
            }}
          />
        </div>
        <Quantity
          label={LAY_WORDS.wetFilm}
          of={wetFilm}
          limit={LIMITS.wetFilm}
          form={form}
          at="film.wetFilm"
        />
        <TimeField label={WORDS.when} {...time.field} problem={form.refused.value?.fields['at']} />
        <Send form={form} icon="coat">
          {WORDS.log}
        </Send>
      </form>
    </Section>
  );
}
