import type { Piece } from '../../../logbook/fold/pieces';
import { Refusal } from '../../../parts/fields/refusal';
import { useForm } from '../../../parts/fields/use-form';
import { Button } from '../../../parts/frame/button';
import { EmptyState } from '../../../parts/frame/empty-state';
import { Page, Section } from '../../../parts/frame/page';
import { linkTo, route } from '../../../parts/frame/route';
import { Row } from '../../../parts/frame/row';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { redissolves } from '../../../science/old-finish/classify';
import { findingOf, oldFinishOf, sandingRule } from '../../../shop/stack/old-finish';
import { AIR_WORDS } from '../../../words/air/air';
import { OLD_WORDS as WORDS } from '../../../words/air/old-finish';
import { DropForm } from './drop-form';
import { DropList } from './drop-list';
import { Lead } from './lead';
import { LookForm } from './look-form';

/** Spot tests of the old finish on a piece: what it is, what it takes, what to mind. */
export function OldFinishPage() {
  const { pieces } = useShop().shop.value;
  const piece = pieces.get(route.value.rest[1] ?? '');
  return piece ? <OfPiece piece={piece} /> : <ChoosePiece />;
}

function ChoosePiece() {
  const open = [...useShop().shop.value.pieces.values()].filter(({ closedMs }) => closedMs === undefined);
  return (
    <Page title={WORDS.title} backTo={linkTo('air')} backLabel={AIR_WORDS.back}>
      {open.length === 0 ? (
        <EmptyState title={WORDS.choose} text={WORDS.noPieces} />
      ) : (
        <Section title={WORDS.choose}>
          <ul class="rows">
            {open.map(({ id, name }) => (
              <Row key={id} href={linkTo('air', 'old', id)} title={name} />
            ))}
          </ul>
        </Section>
      )}
    </Page>
  );
}

function OfPiece({ piece }: { readonly piece: Piece }) {
  const record = oldFinishOf(piece.id, useShop().shop.value);
  const finding = findingOf(record);
  return (
    <Page title={piece.name} backTo={linkTo('air', 'old')} backLabel={WORDS.title}>
      <Section title={WORDS.finding}>
        <p class="margin-label">
          {WORDS.classes[finding.finish]}
          {finding.finish !== 'unknown' && `, ${WORDS.confidence[finding.confidence]}`}
        </p>
        <p>{WORDS.texts[finding.finish]}</p>
        <p>{redissolves(finding.finish) ? WORDS.meltIn : WORDS.noMeltIn}</p>
        {finding.finish !== 'unknown' && <Apply piece={piece} isOpen={redissolves(finding.finish)} />}
      </Section>
      <Section title={finding.next ? WORDS.next(WORDS.solvents[finding.next]) : WORDS.done}>
        <p>{WORDS.how}</p>
        <DropForm key={record.tests.length} piece={piece} next={finding.next} />
        <DropList tests={record.tests} />
      </Section>
      <Section title={WORDS.look}>
        <LookForm piece={piece} seen={record.seen} />
      </Section>
      <Section title={WORDS.lead}>
        <Lead piece={piece} rule={sandingRule(record)} isOpaque={record.seen?.opaque ?? false} />
      </Section>
    </Page>
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
