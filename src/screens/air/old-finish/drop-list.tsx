import type { OldFinishRecord } from '../../../logbook/fold/old-finishes';
import { OLD_WORDS as WORDS } from '../../../words/air/old-finish';
import { unitWord } from '../../../words/frame/logbook';

/** The drops so far, the first first. */
export function DropList({ tests }: Pick<OldFinishRecord, 'tests'>) {
  if (tests.length === 0) return null;
  return (
    <>
      <h3>{WORDS.tests}</h3>
      <ol class="plain-list">
        {tests.map(({ id, solvent, dwell: { typed }, reading }) => (
          <li key={id}>
            {WORDS.test(
              WORDS.solvents[solvent],
              `${typed.text} ${unitWord(typed.unit)}`,
              WORDS.readings[reading].label.toLowerCase(),
            )}
          </li>
        ))}
      </ol>
    </>
  );
}
