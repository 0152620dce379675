import { HeadRow } from '../../../parts/blocks/head-row';
import { useShop } from '../../../parts/frame/shop-context';
import { RECORD as WORDS } from '../../../words/piece/record';
import { clockWords, dateWords } from '../../../words/times';
import { ruleWords } from '../../../words/verdicts/reasons';
import { eventsOf } from '../events';
import { usePiece } from '../use-piece';

/** The holds that were set aside, and everything that was logged; what was undone, and that a line was corrected, only where it is asked for. */
export function Logged({ withUndone }: { readonly withUndone: boolean }) {
  const { shop } = useShop();
  const { piece } = usePiece();
  const events = eventsOf(piece, shop.value).filter(({ isUndone }) => withUndone || !isUndone);
  const { columns } = WORDS;
  return (
    <>
      <Holds />
      <section>
        <h3>{WORDS.history}</h3>
        <table>
          <HeadRow heads={[columns.when, columns.what, columns.how]} />
          <tbody>
            {events.map(({ id, atMs, what, how, isUndone, isCorrected }) => (
              <tr key={id} data-undone={isUndone || undefined}>
                <td class="digits" data-head={columns.when}>
                  {dateWords(atMs, 0)} {clockWords(atMs)}
                </td>
                <td data-head={columns.what}>
                  {what}
                  {isUndone && ` (${WORDS.undone})`}
                  {withUndone && isCorrected && ` (${WORDS.corrected})`}
                </td>
                <td data-head={columns.how}>{how}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}

function Holds() {
  const { shop } = useShop();
  const { piece } = usePiece();
  const holds = shop.value.overrides.get(piece.id) ?? [];
  if (holds.length === 0) return null;
  return (
    <section>
      <h3>{WORDS.holds}</h3>
      <ul>
        {holds.map(({ id, atMs, rule, reason }) => (
          <li key={id}>
            {dateWords(atMs, 0)}, {ruleWords(rule)}: “{reason}”
          </li>
        ))}
      </ul>
    </section>
  );
}
