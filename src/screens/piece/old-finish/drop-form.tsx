import { useComputed, useSignal } from '@preact/signals';
import { testSpot } from '../../../actions/air/test-spot';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { LIMITS } from '../../../logbook/limits';
import { Choice } from '../../../parts/fields/choice';
import { areWhole, OneOf, Quantity, Send } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import { Tick } from '../../../parts/fields/tick';
import type { Draft } from '../../../parts/fields/typed-field';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import {
  DWELL_S,
  SPOT_READINGS,
  SPOT_SOLVENTS,
  type SpotReading,
  type SpotSolvent,
} from '../../../science/old-finish/spot-tests';
import { OLD_WORDS as WORDS } from '../../../words/piece/old-finish';

type Dwell = Draft<'s' | 'min'>;

const SOLVENTS = SPOT_SOLVENTS.map((value) => ({ value, label: WORDS.solvents[value] }));
const READINGS = SPOT_READINGS.map((value) => ({ value, ...WORDS.readings[value] }));
const usualDwell = (solvent: SpotSolvent): Dwell => ({ text: String(DWELL_S[solvent]), unit: 's' });

/** Logs one drop: which solvent, how long, and what happened; the last is never chosen beforehand. */
export function DropForm({ piece, next }: { readonly piece: Piece; readonly next: SpotSolvent | undefined }) {
  const { needs, actions } = useShop();
  const form = useForm();
  const solvent = useSignal<SpotSolvent>(next ?? 'naphtha');
  const dwell = useSignal<Dwell>(usualDwell(solvent.value));
  const reading = useSignal<SpotReading | undefined>(undefined);
  const isTopOnly = useSignal(false);
  const hasAnswered = useComputed(() => reading.value !== undefined && reading.value !== 'nothing');

  async function send(event: Event): Promise<void> {
    event.preventDefault();
    const { value } = reading;
    const isWhole = value !== undefined && areWhole([dwell, LIMITS.dwell]);
    const kept = await form.send(isWhole, () =>
      testSpot(needs, {
        piece: piece.id,
        solvent: solvent.value,
        dwell: dwell.value,
        reading: value ?? 'nothing',
        ...(hasAnswered.value && isTopOnly.value && { isTopOnly: true }),
      }),
    );
    if (kept) showToast({ text: WORDS.logged, onUndo: () => void actions.undo(kept.id) });
  }

  function take(chosen: SpotSolvent): void {
    const { text, unit } = usualDwell(solvent.value);
    if (dwell.value.text === text && dwell.value.unit === unit) dwell.value = usualDwell(chosen);
    solvent.value = chosen;
  }

  return (
    <form class="stack" onSubmit={send} noValidate>
      <Choice label={WORDS.solvent} options={SOLVENTS} value={solvent.value} onChange={take} />
      <Quantity
        label={WORDS.dwell}
        hint={WORDS.dwellHint(`${DWELL_S[solvent.value]} s`)}
        of={dwell}
        limit={LIMITS.dwell}
        form={form}
        at="dwell"
      />
      <div class="wide-tiles">
        <OneOf
          label={WORDS.reading}
          of={reading}
          options={READINGS}
          problem={form.isTried.value && reading.value === undefined ? WORDS.readingMissing : undefined}
        />
      </div>
      {hasAnswered.value && (
        <Tick
          {...WORDS.topOnly}
          isTicked={isTopOnly.value}
          onTick={(isTicked) => {
            isTopOnly.value = isTicked;
          }}
        />
      )}
      <Send form={form}>{WORDS.log}</Send>
    </form>
  );
}
