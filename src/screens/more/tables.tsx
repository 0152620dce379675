import { exportTable } from '../../actions/keep/export-table';
import { Button } from '../../parts/blocks/button';
import { Fold } from '../../parts/blocks/fold';
import { useShop } from '../../parts/frame/shop-context';
import { handOverFile } from '../../reminders/phone/hand-over';
import { MORE_WORDS } from '../../words/frame/more';

const WORDS = MORE_WORDS.tables;

/** The coats, recipes and readings as files for a spreadsheet. */
export function Tables() {
  const { needs } = useShop();
  return (
    <Fold title={WORDS.title}>
      <p>{WORDS.text}</p>
      <div class="acts">
        {(['coats', 'recipes', 'readings'] as const).map((name) => (
          <Button key={name} onClick={() => void exportTable(needs, name).then(handOverFile)}>
            {WORDS[name]}
          </Button>
        ))}
      </div>
    </Fold>
  );
}
