import type { ReadingSet } from '../../../logbook/fold/piece/matches';
import { Button } from '../../../parts/blocks/button';
import { useShop } from '../../../parts/frame/shop-context';
import { undoWithToast } from '../../../parts/frame/undo';
import { labOf } from '../../../shop/colour/lab-of';
import { lightWords } from '../../../words/match/match';
import { READ_WORDS } from '../../../words/match/read';
import { TRIAL_WORDS as WORDS } from '../../../words/match/trial';
import { whenWords } from '../../../words/times';
import { labText } from '../colour-text';

/** Readings as they were taken, each with its undo. */
export function ReadingSets({ sets }: { readonly sets: readonly ReadingSet[] }) {
  if (sets.length === 0) return <p class="quiet">{WORDS.noReadings}</p>;
  return (
    <ul class="reading-sets">
      {sets.map((set) => (
        <OneSet key={set.id} set={set} />
      ))}
    </ul>
  );
}

function OneSet({ set }: { readonly set: ReadingSet }) {
  const { actions, nowMs } = useShop();
  const state = [
    set.isDry ? WORDS.dry : WORDS.wet,
    set.clearCoats === undefined ? WORDS.bare : WORDS.underClear(set.clearCoats),
    lightWords(set.white),
    whenWords(set.atMs, nowMs.value),
  ];
  return (
    <li>
      {set.readings.map((reading, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a reading has no name but its place
        <p key={i} class="digits">
          {asTyped(reading, set)}
        </p>
      ))}
      <p class="quiet small">{state.join(', ')}</p>
      {set.note && <p class="quiet small">{set.note}</p>}
      <Button
        kind="plain"
        icon="undo"
        onClick={() => void undoWithToast(actions, set.id, READ_WORDS.undoName)}
      >
        {WORDS.undoReading}
      </Button>
    </li>
  );
}

/** A reading as it was typed; what was not typed, as its colour. */
function asTyped(reading: ReadingSet['readings'][number], { white }: ReadingSet): string {
  switch (reading.as) {
    case 'lab':
      return `L*a*b* ${[reading.L, reading.a, reading.b].map(({ typed }) => typed.text).join(' / ')}`;
    case 'xyz':
      return `XYZ ${[reading.X, reading.Y, reading.Z].map(({ typed }) => typed.text).join(' / ')}`;
    case 'hex':
      return reading.hex;
    case 'spectrum':
    case 'photo': {
      const lab = labOf(reading, white);
      const said = reading.as === 'photo' ? WORDS.byPhoto : READ_WORDS.spectrum;
      return lab ? `${said}, ${labText(lab)}` : said;
    }
  }
}
