import { Page, Section } from '../../../parts/frame/page';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { findingOf, oldFinishOf } from '../../../shop/stack/old-finish';
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
      <Section title={WORDS.look}>
        <LookForm piece={piece} seen={record.seen} />
      </Section>
      <Section title={WORDS.lead}>
        <Lead key={record.lead?.id} piece={piece} record={record} />
      </Section>
    </Page>
  );
}
