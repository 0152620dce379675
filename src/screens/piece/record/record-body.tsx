import { ownOutlooks } from '../../../actions/outlook/awaited';
import type { Outlook } from '../../../actions/outlook/outlook';
import { documented } from '../../../logbook/fold/piece/zones';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { OutlinedPhoto } from '../../../parts/photo/outlined-photo';
import { zoneFacts } from '../../../shop/record/zone-facts';
import { oldFinishOf } from '../../../shop/stack/old-finish';
import { standsOf } from '../../../shop/zone/stands';
import { isFoundSoft } from '../../../verdicts/rules/film';
import { PHOTO_WORDS } from '../../../words/piece/photo';
import { RECORD as WORDS } from '../../../words/piece/record';
import { temperatureWords } from '../../../words/quantities';
import { dateWords } from '../../../words/times';
import { photoLine } from '../photo/photo-line';
import { drawnOn } from '../photo/photo-page';
import { usePiece } from '../use-piece';
import { Condition } from './condition';
import { careFrom, disclosureFrom, inWorkWords } from './from-facts';
import { Logged } from './logged';
import { RecordColour } from './record-colour';
import { RecordZone } from './record-zone';

/** Everything that the record says, from the logbook alone. */
export function RecordBody({ withUndone }: { readonly withUndone: boolean }) {
  const { shop, outlooks, standings, nowMs } = useShop();
  const { piece, outlook } = usePiece();
  const { notes, wording } = documented(piece.id, shop.value);
  const own = ownOutlooks(piece, outlooks.value);
  const facts = standsOf(piece, shop.value).map((stand) => zoneFacts(stand, shop.value));
  const told = facts.filter(
    (one) => one.stand.zone !== undefined || one.own.length + one.sandedOff > 0 || facts.length === 1,
  );
  const units = useUnits();
  const date = (atMs: number): string => dateWords(atMs, 0);
  return (
    <>
      <header>
        <h2>{piece.name}</h2>
        <p>
          {WORDS.started} {date(piece.startedMs)}.{' '}
          {piece.closedMs === undefined
            ? inWorkWords(standings.value.get(piece.id), nowMs.value)
            : `${WORDS.finished} ${date(piece.closedMs)}`}
          . {WORDS.written(date(nowMs.value))}
        </p>
      </header>
      <Condition />
      <Said title={WORDS.asked} text={wording?.asked} />
      <Said title={WORDS.proposed} text={wording?.proposed} />
      <RecordPhotos />
      <section>
        <h3>{WORDS.zones}</h3>
        {told.map((one) => (
          <RecordZone
            key={one.stand.id}
            facts={one}
            number={facts.indexOf(one)}
            outlook={own.get(one.stand.id)}
          />
        ))}
      </section>
      <RecordColour />
      <Air />
      <Logged withUndone={withUndone} />
      <Undoing text={wording?.undoing} facts={facts} />
      <Said
        title={WORDS.disclosure}
        text={wording?.disclosure || disclosureFrom(facts, oldFinishOf(piece.id, shop.value), units)}
      />
      <Said
        title={WORDS.care}
        text={wording?.care || careFrom(outlook as Outlook | undefined, nowMs.value, isFoundSoft(piece))}
      />
      {notes.some(({ isPrivate }) => !isPrivate) && (
        <section>
          <h3>{WORDS.notes}</h3>
          {notes
            .filter(({ isPrivate }) => !isPrivate)
            .map(({ id, atMs, text }) => (
              <p key={id}>
                {date(atMs)}: {text}
              </p>
            ))}
        </section>
      )}
    </>
  );
}

const Said = ({ title, text }: { readonly title: string; readonly text: string | undefined }) =>
  text ? (
    <section>
      <h3>{title}</h3>
      <p class="as-written">{text}</p>
    </section>
  ) : null;

function RecordPhotos() {
  const { shop } = useShop();
  const { piece } = usePiece();
  const { photos, zones } = documented(piece.id, shop.value);
  if (photos.length === 0) return null;
  return (
    <section>
      <h3>{WORDS.photos}</h3>
      <div class="record-photos">
        {photos.map((photo, i) => {
          const line = PHOTO_WORDS.describe(i + 1, photoLine(photo, 0));
          return (
            <figure key={photo.photo}>
              <OutlinedPhoto
                id={photo.photo}
                describe={line}
                width={photo.width}
                height={photo.height}
                zones={drawnOn(photo, zones)}
              />
              <figcaption>{[line, photo.text].filter(Boolean).join('. ')}</figcaption>
            </figure>
          );
        })}
      </div>
    </section>
  );
}

/** The air of the coats in one line: from the coldest to the warmest, from the driest to the dampest. */
function Air() {
  const { shop } = useShop();
  const units = useUnits();
  const { piece } = usePiece();
  const ids = new Set(piece.coats.flatMap(({ air }) => air ?? []));
  const read = shop.value.airReadings.filter(({ id }) => ids.has(id));
  if (read.length === 0) return null;
  const range = (values: readonly number[], words: (value: number) => string): string => {
    const [low, high] = [words(Math.min(...values)), words(Math.max(...values))];
    return low === high ? low : `${low} – ${high}`;
  };
  return (
    <section>
      <h3>{WORDS.air}</h3>
      <p>
        {WORDS.airLine(
          range(
            read.map(({ temperature }) => temperature.si),
            (kelvin) => temperatureWords(kelvin, units),
          ),
          range(
            read.map(({ humidity }) => humidity.si * 100),
            (percent) => `${Math.round(percent)} %`,
          ),
        )}
      </p>
    </section>
  );
}

interface UndoingProps {
  readonly text: string | undefined;
  readonly facts: readonly ReturnType<typeof zoneFacts>[];
}

/** Which solvent opens which material, newest first; or what the person wrote instead. */
function Undoing({ text, facts }: UndoingProps) {
  if (text) return <Said title={WORDS.undoing} text={text} />;
  const jars = [
    ...new Map(facts.flatMap(({ materials }) => materials).map(({ jar }) => [jar.id, jar])).values(),
  ];
  if (jars.length === 0) return null;
  return (
    <section>
      <h3>{WORDS.undoing}</h3>
      <ul>
        {jars.toReversed().map(({ id, name, product }) => (
          <li key={id}>{WORDS.openedBy(name, WORDS.solvents[product.finish])}</li>
        ))}
      </ul>
      <p>{WORDS.undoingCaveat}</p>
    </section>
  );
}
