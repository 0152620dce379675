import { useSignal } from '@preact/signals';
import { readColour } from '../../../actions/match/read-colour';
import { LIMITS } from '../../../logbook/limits';
import { Section } from '../../../parts/blocks/page';
import { areWhole, OneOf, Quantity, Send } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import type { Draft } from '../../../parts/fields/typed-field';
import { useShop } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import type { TonerState } from '../../../shop/zone/toner';
import { TONER as WORDS } from '../../../words/piece/coat/toner';
import { usePiece } from '../use-piece';

type Of = keyof typeof WORDS.ofs;
const OFS = (Object.keys(WORDS.ofs) as Of[]).map((value) => ({ value, ...WORDS.ofs[value] }));
const EMPTY: Draft<'ratio'> = { text: '', unit: 'ratio' };

/** Reads the target, the bare place, or the place as it is now. */
export function ReadToner({ state: { toner, passesOn, target, ground } }: { readonly state: TonerState }) {
  const { needs, actions } = useShop();
  const { piece, place } = usePiece();
  const form = useForm();
  const of = useSignal<Of>(!target ? 'target' : !ground ? 'ground' : 'toned');
  const [L, a, b] = [useSignal(EMPTY), useSignal(EMPTY), useSignal(EMPTY)];

  async function send(event: Event): Promise<void> {
    event.preventDefault();
    const passes = of.value === 'toned' && passesOn > 0 ? { passes: passesOn } : {};
    const said = {
      match: toner.toner,
      piece: piece.id,
      ...place,
      of: of.value === 'target' ? ({ as: 'target' } as const) : ({ as: 'on-piece', ...passes } as const),
      white: toner.white,
      isDry: true,
      readings: [{ as: 'lab' as const, L: L.value, a: a.value, b: b.value }],
    };
    const isWhole = areWhole([L, LIMITS.lightness], [a, LIMITS.opponent], [b, LIMITS.opponent]);
    const kept = await form.send(isWhole, () => readColour(needs, said));
    if (!kept) return;
    for (const part of [L, a, b]) part.value = EMPTY;
    form.reset();
    sayLogged(actions, kept.id, WORDS.reading, WORDS.logged);
  }

  return (
    <Section title={WORDS.readTitle}>
      <form class="stack wide-tiles" onSubmit={send} noValidate>
        <OneOf label={WORDS.of} of={of} options={OFS} />
        <Quantity label="L*" of={L} limit={LIMITS.lightness} form={form} at="readings.0.L" />
        <Quantity label="a*" of={a} limit={LIMITS.opponent} form={form} at="readings.0.a" />
        <Quantity label="b*" of={b} limit={LIMITS.opponent} form={form} at="readings.0.b" />
        <p class="quiet small">{WORDS.dry}</p>
        <Send form={form}>{WORDS.log}</Send>
      </form>
    </Section>
  );
}
