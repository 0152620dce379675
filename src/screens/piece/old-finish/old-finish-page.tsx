import { Fold } from '../../../parts/blocks/fold';
import { Page, Section } from '../../../parts/blocks/page';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { findingOf, oldFinishOf, sandingRule } from '../../../shop/stack/old-finish';
import { OLD_WORDS as WORDS } from '../../../words/piece/old-finish';
import { usePiece } from '../use-piece';
import { DropForm } from './drop-form';
import { DropList } from './drop-list';
import { Finding } from './finding';
import { Lead } from './lead';
import { LookForm } from './look-form';

/** The old finish on a piece: what it is, what it takes, what to mind. */
export function OldFinishPage() {
  const { piece } = usePiece();
  const record = oldFinishOf(piece.id, useShop().shop.value);
  const finding = findingOf(record);
  const rule = sandingRule(record);
  return (
    <Page title={WORDS.title} backTo={linkTo('piece', piece.id)} backLabel={piece.name}>
      <Section title={WORDS.finding}>
        <Finding {...{ piece, record, finding }} />
      </Section>
      <Section title={finding.next ? WORDS.next(WORDS.solvents[finding.next]) : WORDS.done}>
        <p>{WORDS.how}</p>
        <DropForm key={record.tests.length} piece={piece} next={finding.next} />
        <DropList tests={record.tests} />
      </Section>
      <div class="folds">
        <Fold title={WORDS.look} isOpen={record.tests.length > 0 && record.seen === undefined}>
          <LookForm piece={piece} seen={record.seen} />
        </Fold>
        <Fold title={WORDS.lead} isOpen={rule !== 'any' && record.lead === undefined}>
          <Lead key={record.lead?.id} piece={piece} record={record} />
        </Fold>
      </div>
    </Page>
  );
}
