import { useSignal } from '@preact/signals';
import { testSpot } from '../../../actions/air/test-spot';
import type { Piece } from '../../../logbook/fold/pieces';
import { LIMITS } from '../../../logbook/limits';
import { areWhole, OneOf, Quantity, Send } from '../../../parts/fields/form-fields';
import type { Draft } from '../../../parts/fields/typed-field';
import { useForm } from '../../../parts/fields/use-form';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import {
  DWELL_S,
  SPOT_READINGS,
  SPOT_SOLVENTS,
  type SpotReading,
  type SpotSolvent,
} from '../../../science/old-finish/spot-tests';
import { OLD_WORDS as WORDS } from '../../../words/air/old-finish';

const SOLVENTS = SPOT_SOLVENTS.map((value) => ({ value, label: WORDS.solvents[value] }));
const READINGS = SPOT_READINGS.map((value) => ({ value, ...WORDS.readings[value] }));

/** Notes one drop: which solvent, how long, and what happened. The next in order stands ready. */
export function DropForm({ piece, next }: { readonly piece: Piece; readonly next: SpotSolvent | undefined }) {
  const { needs, actions } = useShop();
  const form = useForm();
  const solvent = useSignal<SpotSolvent>(next ?? 'naphtha');
  const dwell = useSignal<Draft<'s' | 'min'>>({ text: String(DWELL_S[next ?? 'naphtha']), unit: 's' });
  const reading = useSignal<SpotReading>('nothing');

  async function send(event: Event): Promise<void> {
    event.preventDefault();
    const said = { piece: piece.id, solvent: solvent.value, dwell: dwell.value, reading: reading.value };
    const kept = await form.send(areWhole([dwell, LIMITS.dwell]), () => testSpot(needs, said));
    if (kept) showToast({ text: WORDS.logged, onUndo: () => void actions.undo(kept.id) });
  }

  return (
    <form class="stack" onSubmit={send} noValidate>
      <OneOf label={WORDS.solvent} of={solvent} options={SOLVENTS} />
      <Quantity
        label={WORDS.dwell}
        hint={WORDS.dwellHint(`${DWELL_S[solvent.value]} s`)}
        of={dwell}
        limit={LIMITS.dwell}
        form={form}
        at="dwell"
      />
      <OneOf label={WORDS.reading} of={reading} options={READINGS} />
      <Send form={form}>{WORDS.log}</Send>
    </form>
  );
}
