import { useSignal } from '@preact/signals';
import { useState } from 'preact/hooks';
import { notePiece, wordRecord } from '../../../actions/record';
import { documented } from '../../../logbook/fold/piece/zones';
import { Page, Section } from '../../../parts/blocks/page';
import { Send, Words } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import { Tick } from '../../../parts/fields/tick';
import { fromHere, linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import { zoneFacts } from '../../../shop/record/zone-facts';
import { oldFinishOf } from '../../../shop/stack/old-finish';
import { standsOf } from '../../../shop/zone/stands';
import { isFoundSoft } from '../../../verdicts/rules/film';
import { LOGBOOK_WORDS } from '../../../words/frame/logbook';
import { RECORD_FORM as WORDS } from '../../../words/piece/record';
import { usePiece } from '../use-piece';
import { careFrom, disclosureFrom } from './from-facts';

/** What a person adds to the record in words: what was asked, what to tell a buyer, and notes. */
export function WordsPage() {
  const { piece } = usePiece();
  return (
    <Page title={WORDS.title} backTo={linkTo('piece', piece.id, 'record')}>
      <RecordWords />
      <AddNote />
    </Page>
  );
}

function RecordWords() {
  const { shop, needs, actions, nowMs } = useShop();
  const { piece, outlook } = usePiece();
  const { wording } = documented(piece.id, shop.value);
  const units = useUnits();
  const form = useForm();
  const facts = standsOf(piece, shop.value).map((stand) => zoneFacts(stand, shop.value));
  const [known] = useState(() => ({
    disclosure: disclosureFrom(facts, oldFinishOf(piece.id, shop.value), units),
    care: careFrom(outlook, nowMs.peek(), isFoundSoft(piece)),
  }));
  const drafts = {
    asked: useSignal(wording?.asked ?? ''),
    proposed: useSignal(wording?.proposed ?? ''),
    undoing: useSignal(wording?.undoing ?? ''),
    disclosure: useSignal(wording?.disclosure ?? known.disclosure),
    care: useSignal(wording?.care ?? known.care),
  };

  async function save(event: Event): Promise<void> {
    event.preventDefault();
    const goOn = fromHere();
    // What was left as the logbook gave it goes on following the logbook.
    const said = Object.fromEntries(
      Object.entries(drafts)
        .map(([name, { value }]) => [name, value.trim()] as const)
        .filter(([name, text]) => text !== '' && text !== (known as Record<string, string>)[name]),
    );
    const kept = await form.send(true, () => wordRecord(needs, { piece: piece.id, ...said }));
    if (!kept) return;
    sayLogged(actions, kept.id, WORDS.what, WORDS.saved);
    goOn(linkTo('piece', piece.id, 'record'));
  }

  return (
    <Section title={piece.name}>
      <form class="stack" onSubmit={save} noValidate>
        <Words label={WORDS.asked} of={drafts.asked} form={form} at="asked" isLong />
        <Words label={WORDS.proposed} of={drafts.proposed} form={form} at="proposed" isLong />
        <Words
          label={WORDS.undoing}
          hint={WORDS.emptyHint}
          of={drafts.undoing}
          form={form}
          at="undoing"
          isLong
        />
        <Words
          label={WORDS.disclosure}
          hint={WORDS.disclosureHint}
          of={drafts.disclosure}
          form={form}
          at="disclosure"
          isLong
        />
        <Words label={WORDS.care} hint={WORDS.disclosureHint} of={drafts.care} form={form} at="care" isLong />
        <Send form={form} icon="check">
          {WORDS.save}
        </Send>
      </form>
    </Section>
  );
}

function AddNote() {
  const { needs, actions } = useShop();
  const { piece } = usePiece();
  const form = useForm();
  const text = useSignal('');
  const isPrivate = useSignal(false);

  async function save(event: Event): Promise<void> {
    event.preventDefault();
    const said = { piece: piece.id, text: text.value.trim(), isPrivate: isPrivate.value };
    const kept = await form.send(said.text !== '', () => notePiece(needs, said));
    if (!kept) return;
    text.value = '';
    form.reset();
    sayLogged(actions, kept.id, WORDS.note, WORDS.noteSaved);
  }

  return (
    <Section title={WORDS.noteTitle}>
      <form class="stack" onSubmit={save} noValidate>
        <Words
          label={WORDS.note}
          of={text}
          form={form}
          at="text"
          problem={text.value.trim() === '' ? LOGBOOK_WORDS.empty : undefined}
          isLong
        />
        <Tick
          label={WORDS.isPrivate}
          isTicked={isPrivate.value}
          onTick={(is) => {
            isPrivate.value = is;
          }}
        />
        <Send form={form} icon="note">
          {WORDS.saveNote}
        </Send>
      </form>
    </Section>
  );
}
