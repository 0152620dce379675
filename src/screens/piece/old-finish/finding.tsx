import type { OldFinishRecord } from '../../../logbook/fold/piece/old-finishes';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { Button } from '../../../parts/blocks/button';
import { Refusal } from '../../../parts/fields/form/refusal';
import { useForm } from '../../../parts/fields/form/use-form';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { type OldFinishFinding, redissolves } from '../../../science/old-finish/classify';
import { hasLayers } from '../../../shop/stack/old-finish';
import { OLD_WORDS as WORDS } from '../../../words/piece/old-finish';
import { byShare, classWords, findingWords } from './finding-words';

interface FindingProps {
  readonly piece: Piece;
  readonly record: OldFinishRecord;
  readonly finding: OldFinishFinding;
}

/** What drops and looks say, with the odds in words, and what follows for the next coat. */
export function Finding({ piece, record, finding }: FindingProps) {
  const isOpaque = record.seen?.opaque ?? false;
  const [first, second] = byShare(finding);
  const isAnything = record.tests.length > 0 || record.seen !== undefined;
  return (
    <>
      <p class="margin-label">{findingWords(finding, isOpaque)}</p>
      {finding.finish === 'unknown' && isAnything && first && second && (
        <p>{WORDS.between(classWords(first, isOpaque), classWords(second, isOpaque))}</p>
      )}
      {hasLayers(record) && <p>{WORDS.several}</p>}
      <p>{WORDS.texts[finding.finish]}</p>
      <p>{redissolves(finding.finish) ? WORDS.meltIn : WORDS.noMeltIn}</p>
      {finding.finish !== 'unknown' && <p class="quiet">{WORDS.certain}</p>}
      {finding.finish !== 'unknown' && <Apply piece={piece} isOpen={redissolves(finding.finish)} />}
      {isAnything && <Shares finding={finding} isOpaque={isOpaque} />}
    </>
  );
}

const STEP = 5;

function Shares({ finding, isOpaque }: { readonly finding: OldFinishFinding; readonly isOpaque: boolean }) {
  return (
    <details class="folded">
      <summary>{WORDS.shares}</summary>
      <dl class="fact-list">
        {byShare(finding).map((finish) => (
          <div key={finish}>
            <dt>{classWords(finish, isOpaque)}</dt>
            <dd class="digits">{WORDS.share(Math.floor((100 * finding.shares[finish]) / STEP) * STEP)}</dd>
          </div>
        ))}
      </dl>
      <p class="quiet small">{WORDS.shareSource}</p>
    </details>
  );
}

/** Carries the finding into the piece, where the drying model asks for it. */
function Apply({ piece, isOpen }: { readonly piece: Piece; readonly isOpen: boolean }) {
  const { actions } = useShop();
  const form = useForm();
  const base = isOpen ? 'old-redissolves' : 'old-closed';
  if (piece.base === base || piece.closedMs !== undefined) return null;

  async function apply(): Promise<void> {
    const kept = await form.send(true, () => actions.changePiece({ piece: piece.id, base }));
    if (kept) showToast({ text: WORDS.applied, onUndo: () => void actions.undo(kept.id) });
  }

  return (
    <>
      <Refusal refused={form.refused.value} />
      <div class="acts">
        <Button icon="check" onClick={() => void apply()}>
          {WORDS.apply}
        </Button>
      </div>
    </>
  );
}
