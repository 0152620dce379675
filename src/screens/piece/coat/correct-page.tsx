import { useSignal } from '@preact/signals';
import { parseNumber } from '../../../logbook/as-typed';
import type { Entry } from '../../../logbook/entry';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { LIMITS, type Limit } from '../../../logbook/limits';
import { Page, Section } from '../../../parts/blocks/page';
import { Quantity } from '../../../parts/fields/form/form-fields';
import { PassesField, passesProblem } from '../../../parts/fields/passes-field';
import { named, SelectField } from '../../../parts/fields/select-field';
import { type Draft, draftProblem } from '../../../parts/fields/typed-field';
import { linkTo, route } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { CorrectionForm, type To } from '../../../parts/kept/correction-form';
import { CORRECT_WORDS as WORDS } from '../../../words/piece/coat/correct';
import { eventsOf } from '../events';
import { usePiece } from '../use-piece';

/** Corrects one line of what was done: its time, its piece, its jar, its amount. */
export function CorrectPage() {
  const { shop } = useShop();
  const { piece } = usePiece();
  const id = route.value.rest[2] ?? '';
  const entry = shop.value.corrected.get(id)?.entry ?? shop.value.entries.get(id);
  const event = eventsOf(piece, shop.value).find((one) => one.id === id);
  return (
    <Page title={WORDS.title} backTo={linkTo('piece', piece.id)}>
      <Section title={event ? `${piece.name}: ${event.what}` : piece.name}>
        {entry && event ? (
          <CorrectForm key={id} {...{ entry, piece }} what={event.what} />
        ) : (
          <p>{WORDS.gone}</p>
        )}
      </Section>
    </Page>
  );
}

interface CorrectFormProps {
  readonly entry: Entry;
  readonly piece: Piece;
  readonly what: string;
}

function CorrectForm({ entry, piece, what }: CorrectFormProps) {
  const { shop } = useShop();
  const pieceId = useSignal(piece.id);
  const jar = useSignal('jar' in entry ? entry.jar : undefined);
  const before = amountOf(entry);
  const amount = useSignal<Draft<'um' | 'mil'>>(before?.draft ?? { text: '', unit: 'um' });
  const passes = useSignal(before?.passes);
  const isWhole =
    (!before || draftProblem(amount.value, before.limit) === undefined) &&
    (passes.value === undefined || passesProblem(passes.value) === undefined);

  const changes = (): To => {
    const { text, unit } = amount.value;
    const isOther =
      before && (text !== before.draft.text || unit !== before.draft.unit || passes.value !== before.passes);
    return {
      ...(pieceId.value !== piece.id && { piece: pieceId.value }),
      ...(jar.value !== undefined && 'jar' in entry && jar.value !== entry.jar && { jar: jar.value }),
      ...(isOther && before.say(amount.value, parseNumber(passes.value ?? '') ?? 0)),
    };
  };

  const { pieces, jars } = shop.value;
  return (
    <CorrectionForm
      entry={entry}
      isWhole={isWhole}
      changes={changes}
      what={WORDS.one(what)}
      done={WORDS.done(what)}
      backTo={linkTo('piece', piece.id)}
    >
      {(form) => (
        <>
          {'piece' in entry && entry.kind !== 'piece-started' && entry.kind !== 'zone-described' && (
            <SelectField
              label={WORDS.piece}
              options={named(pieces.values())}
              value={pieceId.value}
              onChange={(next) => {
                pieceId.value = next;
              }}
            />
          )}
          {pieceId.value !== piece.id && 'zoneId' in entry && <p>{WORDS.placeStays}</p>}
          {pieceId.value !== piece.id && entry.kind === 'photographed' && <p>{WORDS.outlinesStay}</p>}
          {jar.value !== undefined && (
            <SelectField
              label={WORDS.jar}
              options={named(jars.values())}
              value={jar.value}
              onChange={(next) => {
                jar.value = next;
              }}
            />
          )}
          {passes.value !== undefined && (
            <PassesField
              text={passes.value}
              onText={(text) => {
                passes.value = text;
              }}
              isTried={form.isTried.value}
              refused={form.refused.value?.fields['to.film.passes']}
            />
          )}
          {before && (
            <Quantity label={before.label} of={amount} limit={before.limit} form={form} at={before.at} />
          )}
        </>
      )}
    </CorrectionForm>
  );
}

type Um = Draft<'um' | 'mil'>;

interface Amount {
  readonly label: string;
  readonly limit: Limit<readonly ['um', 'mil']>;
  /** Where it stands in the correction. */
  readonly at: string;
  readonly draft: Um;
  /** How many passes, where it is said by them. */
  readonly passes?: string;
  readonly say: (amount: Um, passes: number) => To;
}

/** How much an entry says, and how it is said otherwise. */
function amountOf(entry: Entry): Amount | undefined {
  if (entry.kind === 'sanded')
    return {
      label: WORDS.removed,
      limit: LIMITS.removed,
      at: 'to.removed',
      draft: entry.removed,
      say: (removed) => ({ removed }),
    };
  if (entry.kind !== 'coat-laid') return undefined;
  const { film } = entry;
  if (film.by === 'wet')
    return {
      label: WORDS.wetFilm,
      limit: LIMITS.wetFilm,
      at: 'to.film.wetFilm',
      draft: film.wetFilm,
      say: (wetFilm) => ({ film: { ...film, wetFilm } }),
    };
  if (film.by === 'passes')
    return {
      label: WORDS.perPass,
      limit: LIMITS.wetFilm,
      at: 'to.film.perPass',
      draft: film.perPass,
      passes: String(film.passes),
      say: (perPass, passes) => ({ film: { ...film, perPass, passes } }),
    };
  return {
    label: WORDS.dryFilm,
    limit: LIMITS.dryFilm,
    at: 'to.film.dryFilm',
    draft: film.dryFilm,
    say: (dryFilm) => ({ film: { ...film, dryFilm } }),
  };
}
