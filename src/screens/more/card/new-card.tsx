import { useSignal } from '@preact/signals';
import { makeCard } from '../../../actions/card/log-card';
import { readTyped } from '../../../logbook/as-typed';
import { LIMITS } from '../../../logbook/limits';
import { Page, Section } from '../../../parts/blocks/page';
import { FewFirst } from '../../../parts/fields/few-first';
import { areWhole, OneOf, Quantity, Send } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import { named } from '../../../parts/fields/select-field';
import { TimeField } from '../../../parts/fields/time/time-field';
import { useTime } from '../../../parts/fields/time/use-time';
import type { Draft } from '../../../parts/fields/typed-field';
import { fromHere, linkTo, route } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import { CARD_WORDS, CARD_FORM as WORDS } from '../../../words/piece/card';
import { LAY_WORDS } from '../../../words/piece/coat/lay';
import { WhatItWouldTell } from './what-it-would-tell';

const FACES = (['1', '2'] as const).map((value) => ({ value, ...WORDS.face[value] }));
const DIVISIONS = (['0.001', '0.01', '0.1'] as const).map((value) => ({ value, ...WORDS.divisions[value] }));
const NONE = 'none';

/** A card is made: what it lies beside, how large, how heavy bare, and on what scale; and what such a card can tell. */
export function NewCard() {
  const { shop, needs, actions } = useShop();
  const isUs = useUnits() === 'us';
  const open = [...shop.value.pieces.values()].filter(({ closedMs }) => closedMs === undefined).reverse();
  const asked = route.value.query.get('piece');
  const form = useForm();
  const piece = useSignal(open.find(({ id }) => id === asked)?.id ?? open[0]?.id ?? NONE);
  const area = useSignal<Draft<(typeof LIMITS.area.units)[number]>>(
    isUs ? { text: '31', unit: 'in2' } : { text: '200', unit: 'cm2' },
  );
  const faces = useSignal<'1' | '2'>('1');
  const time = useTime();
  const bare = useSignal<Draft<'g'>>({ text: '', unit: 'g' });
  const division = useSignal<(typeof DIVISIONS)[number]['value']>('0.001');
  const pieceId = piece.value === NONE ? undefined : piece.value;
  const areaRead = readTyped(area.value, LIMITS.area);

  async function make(event: Event): Promise<void> {
    event.preventDefault();
    const goOn = fromHere();
    const made = await form.send(areWhole([area, LIMITS.area], [bare, LIMITS.mass]), () =>
      makeCard(
        needs,
        {
          ...(pieceId !== undefined && { piece: pieceId }),
          area: area.value,
          faces: faces.value === '2' ? 2 : 1,
          bare: bare.value,
          division: { text: division.value, unit: 'g' },
        },
        time.instantMs() ?? Number.NaN,
      ),
    );
    if (!made) return;
    sayLogged(actions, made.id, CARD_WORDS.one, WORDS.logged);
    goOn(linkTo('more', 'cards', made.card));
  }

  return (
    <Page title={WORDS.title} backTo={linkTo('more', 'cards')}>
      <form class="stack" onSubmit={(event) => void make(event)} noValidate>
        <p>{WORDS.lead}</p>
        <div class="wide-tiles">
          <FewFirst
            label={WORDS.piece}
            allWords={LAY_WORDS.allPieces}
            options={[...named(open), { value: NONE, label: WORDS.noPiece, hint: WORDS.noPieceHint }]}
            value={piece.value}
            onChange={(id) => {
              piece.value = id;
            }}
          />
        </div>
        <Quantity
          label={WORDS.area}
          hint={WORDS.areaHint}
          of={area}
          limit={LIMITS.area}
          form={form}
          at="area"
        />
        <OneOf label={WORDS.faces} of={faces} options={FACES} />
        <OneOf label={WORDS.division} of={division} options={DIVISIONS} />
        <Quantity
          label={WORDS.bare}
          hint={WORDS.bareHint}
          of={bare}
          limit={LIMITS.mass}
          form={form}
          at="bare"
        />
        <TimeField label={WORDS.when} {...time.field} problem={form.refused.value?.fields['at']} />
        <Section title={WORDS.tells}>
          <WhatItWouldTell
            pieceId={pieceId}
            areaM2={areaRead.ok ? areaRead.value * Number(faces.value) : undefined}
            divisionKg={Number(division.value) / 1000}
          />
        </Section>
        <Send form={form} icon="add">
          {WORDS.log}
        </Send>
      </form>
    </Page>
  );
}
