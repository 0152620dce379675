import { useSignal } from '@preact/signals';
import { LIMITS } from '../../../logbook/limits';
import { Choice } from '../../../parts/fields/choice';
import { NumberField } from '../../../parts/fields/number-field';
import { SelectField } from '../../../parts/fields/select-field';
import { TypedField } from '../../../parts/fields/typed-field';
import { Page, Section } from '../../../parts/frame/page';
import { linkTo, route } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { AMOUNT_WORDS as WORDS } from '../../../words/mix/tools';
import {
  areaOfPiece,
  coatsOf,
  fillingsOf,
  holdUpOf,
  type JobDraft,
  newJob,
  SHAPE_KEYS,
  SIZES,
  type Size,
  sizeM,
  transferOf,
} from './draft';
import { ItTakes } from './it-takes';

interface JobProps {
  readonly draft: JobDraft;
  readonly patch: (some: Partial<JobDraft>) => void;
}

// What was typed stays while a recipe is looked at or written.
let lastJob: JobDraft | undefined;

/** How much a job takes, before anything is mixed. */
export function AmountPage() {
  const isUs = useUnits() === 'us';
  const draft = useSignal(lastJob ?? newJob(isUs));
  const recipe = route.value.query.get('recipe');
  const patch = (some: Partial<JobDraft>) => {
    draft.value = { ...draft.value, ...some };
    lastJob = draft.value;
  };
  const parts = { draft: draft.value, patch };
  return (
    <Page title={WORDS.title} backTo={recipe ? linkTo('mix', 'recipe', recipe) : linkTo('mix')}>
      <Section title={WORDS.area}>
        <AreaFields {...parts} />
      </Section>
      <Section title={WORDS.coats}>
        <CoatFields {...parts} />
      </Section>
      <ItTakes draft={draft.value} recipe={recipe ?? undefined} />
    </Page>
  );
}

function AreaFields({ draft, patch }: JobProps) {
  const { shop } = useShop();
  const pieces = [...shop.value.pieces.values()].filter(
    ({ area, closedMs }) => area !== undefined && closedMs === undefined,
  );
  return (
    <>
      {pieces.length > 0 && (
        <SelectField
          label={WORDS.piece}
          prompt={WORDS.noPiece}
          options={pieces.map(({ id, name }) => ({ value: id, label: name }))}
          value={undefined}
          onChange={(id) => {
            const piece = shop.value.pieces.get(id);
            if (piece) patch(areaOfPiece(piece));
          }}
        />
      )}
      <Choice
        label={WORDS.shape}
        options={SHAPE_KEYS.map((value) => ({ value, ...WORDS.shapes[value] }))}
        value={draft.shape}
        onChange={(shape) => patch({ shape })}
      />
      {draft.shape === 'known' && (
        <TypedField
          label={WORDS.knownArea}
          limit={LIMITS.area}
          draft={draft.area}
          onDraft={(area) => patch({ area })}
        />
      )}
      <div class="pair">
        {(SIZES[draft.shape] ?? []).map((size) => (
          <SizeField key={size} size={size} draft={draft} patch={patch} />
        ))}
      </div>
    </>
  );
}

function SizeField({ size, draft, patch }: JobProps & { readonly size: Size }) {
  const text = draft.sizes[size];
  return (
    <NumberField
      label={WORDS[size]}
      text={text}
      onText={(typed) => patch({ sizes: { ...draft.sizes, [size]: typed } })}
      units={[
        { value: 'cm', label: 'cm' },
        { value: 'in', label: 'in' },
      ]}
      unit={draft.sizeUnit}
      onUnit={(sizeUnit) => patch({ sizeUnit })}
      problem={text !== '' && sizeM(draft, size) === undefined ? WORDS.sizeProblem : undefined}
    />
  );
}

const PERCENT = [{ value: '%', label: '%' }];
const MILLILITRES = [{ value: 'mL', label: 'mL' }];

function CoatFields({ draft, patch }: JobProps) {
  return (
    <>
      <NumberField
        label={WORDS.coats}
        text={draft.coats}
        onText={(coats) => patch({ coats })}
        problem={coatsOf(draft) === undefined ? WORDS.coatsProblem : undefined}
      />
      <TypedField
        label={WORDS.wetFilm}
        limit={LIMITS.wetFilm}
        draft={draft.wetFilm}
        onDraft={(wetFilm) => patch({ wetFilm })}
        hint={WORDS.wetHint}
      />
      <NumberField
        label={WORDS.transfer}
        text={draft.transfer}
        onText={(transfer) => patch({ transfer })}
        units={PERCENT}
        hint={WORDS.transferHint}
        problem={transferOf(draft) === undefined ? WORDS.transferProblem : undefined}
      />
      <div class="pair">
        <NumberField
          label={WORDS.holdUp}
          text={draft.holdUp}
          onText={(holdUp) => patch({ holdUp })}
          units={MILLILITRES}
          hint={WORDS.holdUpHint}
          problem={holdUpOf(draft) === undefined ? WORDS.holdUpProblem : undefined}
        />
        <NumberField
          label={WORDS.fillings}
          text={draft.fillings}
          onText={(fillings) => patch({ fillings })}
          hint={WORDS.fillingsHint}
          problem={fillingsOf(draft) === undefined ? WORDS.fillingsProblem : undefined}
        />
      </div>
      <TypedField
        label={WORDS.keepBack}
        limit={LIMITS.keepBack}
        draft={draft.keepBack}
        onDraft={(keepBack) => patch({ keepBack })}
        isOptional
      />
    </>
  );
}
