import { useSignal } from '@preact/signals';
import { describeToner } from '../../../actions/zone/describe-toner';
import { Button } from '../../../parts/blocks/button';
import { HeadRow } from '../../../parts/blocks/head-row';
import { Notice } from '../../../parts/blocks/notice';
import { Page, Section } from '../../../parts/blocks/page';
import { Refusal } from '../../../parts/fields/form/refusal';
import { useForm } from '../../../parts/fields/form/use-form';
import { named, SelectField } from '../../../parts/fields/select-field';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import { TonerShare } from '../../../parts/mix/toner-share';
import { type TonerState, tonerOn } from '../../../shop/zone/toner';
import { tonerMix } from '../../../shop/zone/toner-mix';
import { TONER as WORDS } from '../../../words/piece/coat/toner';
import { volumeWords } from '../../../words/volumes';
import { usePiece } from '../use-piece';
import { ReadToner } from './read-toner';
import { TonerPasses } from './toner-passes';

/** A toner on a place: what is on, what is still to go, a row a pass, and the readings. */
export function TonerPage() {
  const { shop } = useShop();
  const { piece, zone, home } = usePiece();
  const state = tonerOn(piece.id, zone?.zoneId, shop.value);
  return (
    <Page title={WORDS.title} backTo={home} backLabel={zone?.name ?? piece.name}>
      {state ? (
        <>
          <Section title={WORDS.on(state.passesOn)}>
            <ToGo state={state} />
            <InJar jar={state.toner.jar} />
            <TonerPasses state={state} />
            <p class="quiet">
              {WORDS.fade} {WORDS.lockIn} {WORDS.clamp}
            </p>
          </Section>
          {state.rows.length > 0 && <Rows rows={state.rows} />}
          <ReadToner key={state.passesOn} state={state} />
        </>
      ) : (
        <ChooseJar />
      )}
    </Page>
  );
}

/** Of the mix and of thinner: with what stays in the gun, one pass (common practice, no source). */
const HALF_OF_EACH_M3 = 10e-6;

function ToGo({ state: { plan } }: { readonly state: TonerState }) {
  const units = useUnits();
  switch (plan?.kind) {
    case undefined:
      return <p>{WORDS.missing}</p>;
    case 'passes':
      return (
        <>
          <p class="outcome-figure">{WORDS.toGo(plan.fullPasses, plan.endsWithHalfPass)}</p>
          {plan.endsWithHalfPass && <p>{WORDS.half(volumeWords(HALF_OF_EACH_M3, units))}</p>}
          <p>{WORDS.last}</p>
        </>
      );
    case 'cannot-be-made-lighter':
      return (
        <Notice kind="stop">
          <p>{WORDS.tooDark}</p>
        </Notice>
      );
    case 'already-there':
      return <p>{WORDS.there(plan.dE00.toFixed(2))}</p>;
    case 'another-toner':
      return <p>{WORDS.other}</p>;
  }
}

/** What the jar holds: lacquer against what a toner takes, and each dye by drops of its bottle. */
function InJar({ jar }: { readonly jar: string }) {
  const { shop } = useShop();
  const units = useUnits();
  const { share, doses } = tonerMix(jar, shop.value);
  return (
    <>
      {doses.map(({ name, volumeM3, drops }) => {
        const amount = volumeWords(volumeM3, units);
        return (
          <p key={name} class="digits">
            {drops === undefined ? WORDS.dose(name, amount) : WORDS.doseInDrops(name, amount, drops)}
          </p>
        );
      })}
      <TonerShare share={share} />
    </>
  );
}

function Rows({ rows }: Pick<TonerState, 'rows'>) {
  return (
    <Section title={WORDS.rows}>
      <table class="toner-rows digits">
        <HeadRow heads={[WORDS.pass, WORDS.colour, WORDS.difference]} />
        <tbody>
          {rows.map(({ passes, lab: { L, a, b }, dE00, isRead }) => (
            <tr key={`${passes} ${isRead}`}>
              <td>
                {passes} <small>{isRead ? WORDS.read : WORDS.expected}</small>
              </td>
              <td>{[L, a, b].map((part) => part.toFixed(1).replace('-', '\u2212')).join(' / ')}</td>
              <td>{dE00.toFixed(2)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Section>
  );
}

function ChooseJar() {
  const { shop, needs, actions } = useShop();
  const { piece, place } = usePiece();
  const form = useForm();
  const jars = [...shop.value.jars.values()].filter(({ emptiedMs }) => emptiedMs === undefined);
  const jar = useSignal(jars.at(-1)?.id);
  if (jars.length === 0) return <p>{WORDS.noJar}</p>;

  async function choose(): Promise<void> {
    const said = { piece: piece.id, ...place, jar: jar.value ?? '', white: 'D65/10' } as const;
    const kept = await form.send(true, () => describeToner(needs, said));
    if (kept) sayLogged(actions, kept.id, WORDS.what, WORDS.used);
  }

  return (
    <Section title={WORDS.choose}>
      <SelectField
        label={WORDS.jar}
        options={named(jars)}
        value={jar.value}
        onChange={(id) => {
          jar.value = id;
        }}
      />
      <Refusal refused={form.refused.value} />
      <div class="acts">
        <Button kind="main" icon="check" isWide onClick={() => void choose()}>
          {WORDS.use}
        </Button>
      </div>
    </Section>
  );
}
