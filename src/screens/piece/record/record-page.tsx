import { CrossSection } from '../../../parts/film/cross-section';
import { filmLayers } from '../../../parts/film/piece-film';
import { Button } from '../../../parts/frame/button';
import { Page, Section } from '../../../parts/frame/page';
import { linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { umToMetres } from '../../../units';
import { FILM_WORDS } from '../../../words/piece/film';
import { PIECE_FORM, PIECE_WORDS, RECORD_WORDS } from '../../../words/piece/piece';
import { filmWords } from '../../../words/quantities';
import { clockWords, dateWords } from '../../../words/times';
import { eventsOf } from '../events';
import { typedWords } from '../film-as-typed';
import { describeFilm, MIL } from '../finish';
import { usePiece } from '../use-piece';

/** The treatment record, for the printer and for whoever works on the piece next. */
export function RecordPage() {
  const { nowMs } = useShop();
  const { piece } = usePiece();
  return (
    <Page title={RECORD_WORDS.title} backTo={linkTo('piece', piece.id)}>
      <div class="acts">
        <Button kind="main" icon="print" onClick={() => print()}>
          {RECORD_WORDS.print}
        </Button>
      </div>
      <Section title={piece.name}>
        <RecordFacts />
      </Section>
      <Section title={PIECE_WORDS.history}>
        <RecordTable />
        <p class="quiet small">{RECORD_WORDS.printed(dateWords(nowMs.value, 0))}</p>
      </Section>
    </Page>
  );
}

function RecordFacts() {
  const { shop, nowMs } = useShop();
  const units = useUnits();
  const { piece, outlook } = usePiece();
  const layers = filmLayers(piece, outlook, shop.value.jars, nowMs.value);
  const dryUm = layers.reduce((sum, layer) => sum + layer.dryUm, 0);
  const facts = {
    [RECORD_WORDS.base]: PIECE_FORM.bases[piece.base].label,
    [RECORD_WORDS.area]: piece.area && typedWords(piece.area.typed),
    [RECORD_WORDS.coats]: String(piece.coats.length),
    [RECORD_WORDS.build]: dryUm > 0 && filmWords(umToMetres(dryUm), units),
    [RECORD_WORDS.note]: piece.note,
  };
  return (
    <>
      <figure class="stack">
        <CrossSection
          layers={layers}
          woodLabel={FILM_WORDS.woods[piece.base]}
          describe={describeFilm(piece, layers, units)}
          {...(units === 'us' && { unit: MIL })}
        />
        <figcaption class="quiet small">{FILM_WORDS.figure}</figcaption>
      </figure>
      <dl class="fact-list">
        {Object.entries(facts).map(
          ([term, text]) =>
            text && (
              <div key={term}>
                <dt>{term}</dt>
                <dd>{text}</dd>
              </div>
            ),
        )}
      </dl>
    </>
  );
}

function RecordTable() {
  const { shop } = useShop();
  const { piece } = usePiece();
  const { columns } = RECORD_WORDS;
  return (
    <table class="record">
      <thead>
        <tr>
          {[columns.when, columns.what, columns.how].map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {eventsOf(piece, shop.value).map(({ id, atMs, what, how, isUndone }) => (
          <tr key={id} data-undone={isUndone || undefined}>
            <td class="digits">
              {dateWords(atMs, 0)} {clockWords(atMs)}
            </td>
            <td>
              {what}
              {isUndone && ` (${RECORD_WORDS.undone})`}
            </td>
            <td>{how}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
