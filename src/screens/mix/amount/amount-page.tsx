import { useSignal } from '@preact/signals';
import { LIMITS } from '../../../logbook/limits';
import { Fold } from '../../../parts/blocks/fold';
import { Page, Section } from '../../../parts/blocks/page';
import { Choice } from '../../../parts/fields/choice';
import { NumberField } from '../../../parts/fields/number-field';
import { named, SelectField } from '../../../parts/fields/select-field';
import { TypedField } from '../../../parts/fields/typed-field';
import { linkTo, route } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { USUAL_AREAS_M2 } from '../../../science/film/shapes';
import { unitWord } from '../../../words/frame/logbook';
import { AMOUNT_WORDS as WORDS } from '../../../words/mix/tools';
import type { UnitSystem } from '../../../words/quantities';
import { areaWords } from '../../../words/volumes';
import {
  coatsOf,
  fillingsOf,
  type JobDraft,
  SHAPE_KEYS,
  type ShapeKey,
  SIZES,
  type Size,
  sizeM,
  transferOf,
} from './amount-draft';
import { draftOfJob, keepJob, pieceOfJob } from './amount-job';
import { ItTakes } from './it-takes';
import { factsOf, type Source } from './source';
import { SourceFields } from './source-fields';

interface JobProps {
  readonly draft: JobDraft;
  readonly patch: (some: Partial<JobDraft>) => void;
}

/** How much a job takes, before anything is mixed. */
export function AmountPage() {
  const { shop } = useShop();
  const isUs = useUnits() === 'us';
  const { query } = route.value;
  const source = useSignal(askedFor(query.get('jar'), query.get('recipe')));
  const asked = useSignal(query.get('piece'));
  const job = { piece: pieceOfJob(asked.value, source.value, shop.value), source: source.value };
  const typed = useSignal(0); // each change is drawn; what was typed is kept with its job
  const draft = draftOfJob(job, shop.value, isUs);
  const patch = (some: Partial<JobDraft>) => {
    keepJob(job, { ...draft, ...some });
    typed.value++;
  };
  void typed.value;
  const parts = { draft, patch };
  const facts = factsOf(source.value, shop.value);
  return (
    <Page title={WORDS.title} backTo={backTo(source.value)}>
      <Section title={WORDS.with}>
        <SourceFields
          source={source.value}
          facts={facts}
          onSource={(next) => {
            source.value = next;
          }}
        />
      </Section>
      <Section title={WORDS.area}>
        <AreaFields
          {...parts}
          piece={job.piece?.id}
          onPiece={(id) => {
            asked.value = id;
          }}
        />
      </Section>
      <Fold title={WORDS.coats} brief={coatsBrief(draft)}>
        <CoatFields {...parts} />
      </Fold>
      <ItTakes draft={draft} source={source.value} facts={facts} piece={job.piece?.id} />
    </Page>
  );
}

/** "3 × 100 µm" */
const coatsBrief = ({ coats, by, wetFilm, rate }: JobDraft): string => {
  const { text, unit } = by === 'rate' ? rate : wetFilm;
  return `${coats} × ${text} ${unitWord(unit)}`;
};

const askedFor = (jar: string | null, recipe: string | null): Source => {
  if (jar !== null) return { from: 'jar', id: jar };
  return recipe === null ? { from: 'finish', finish: 'nitrocellulose' } : { from: 'recipe', id: recipe };
};
const backTo = (source: Source): string =>
  source.from === 'finish' ? linkTo('mix') : linkTo('mix', source.from, source.id);

const SLIMS = ['flat', 'slim'] as const;

/** The usual area of a whole thing, beside its name. */
function usualHint(shape: ShapeKey, units: UnitSystem): { readonly hint?: string } {
  const usualM2 = (USUAL_AREAS_M2 as Readonly<Record<string, number>>)[shape];
  return usualM2 === undefined ? {} : { hint: areaWords(usualM2, units) };
}

type AreaProps = JobProps & {
  readonly piece: string | undefined;
  readonly onPiece: (id: string) => void;
};

function AreaFields({ draft, patch, piece, onPiece }: AreaProps) {
  const { shop } = useShop();
  const units = useUnits();
  const pieces = [...shop.value.pieces.values()].filter(({ closedMs }) => closedMs === undefined);
  return (
    <>
      {pieces.length > 0 && (
        <SelectField
          label={WORDS.piece}
          prompt={WORDS.noPiece}
          options={named(pieces)}
          value={piece}
          onChange={onPiece}
        />
      )}
      <Choice
        label={WORDS.shape}
        options={SHAPE_KEYS.map((value) => ({ value, ...WORDS.shapes[value], ...usualHint(value, units) }))}
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
      <Choice
        label={WORDS.slim}
        options={SLIMS.map((value) => ({ value, ...WORDS.slims[value] }))}
        value={draft.slim}
        onChange={(slim) => patch({ slim })}
      />
    </>
  );
}

function SizeField({ size, draft, patch }: JobProps & { readonly size: Size }) {
  const text = draft.sizes[size];
  return (
    <NumberField
      label={WORDS[size]}
      text={text}
      onText={(typed, sizeUnit = draft.sizeUnit) =>
        patch({ sizes: { ...draft.sizes, [size]: typed }, sizeUnit })
      }
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
const BYS = ['wet', 'rate'] as const;
const WAYS = ['spray', 'hand'] as const;

function CoatFields({ draft, patch }: JobProps) {
  const units = useUnits();
  return (
    <>
      {draft.way !== 'can' && (
        <Choice
          label={WORDS.way}
          options={WAYS.map((value) => ({ value, ...WORDS.ways[value] }))}
          value={draft.way}
          onChange={(way) => patch({ way })}
        />
      )}
      <NumberField
        label={WORDS.coats}
        text={draft.coats}
        onText={(coats) => patch({ coats })}
        problem={coatsOf(draft) === undefined ? WORDS.coatsProblem : undefined}
      />
      <Choice
        label={WORDS.by}
        options={BYS.map((value) => ({ value, ...WORDS.bys[value] }))}
        value={draft.by}
        onChange={(by) => patch({ by })}
      />
      {draft.by === 'rate' ? (
        <TypedField
          label={WORDS.rate}
          limit={LIMITS.spreadingRate}
          draft={draft.rate}
          onDraft={(rate) => patch({ rate })}
          hint={WORDS.rateHint}
        />
      ) : (
        <>
          <TypedField
            label={WORDS.wetFilm}
            limit={LIMITS.wetFilm}
            draft={draft.wetFilm}
            onDraft={(wetFilm) => patch({ wetFilm })}
            hint={WORDS.wetHint(units, draft.way)}
          />
          {draft.way !== 'hand' && (
            <NumberField
              label={WORDS.transfer}
              text={draft.transfer}
              onText={(transfer) => patch({ transfer })}
              units={PERCENT}
              hint={WORDS.transferHint}
              problem={transferOf(draft) === undefined ? WORDS.transferProblem : undefined}
            />
          )}
        </>
      )}
      {draft.way === 'spray' && <GunFields {...{ draft, patch }} />}
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

function GunFields({ draft, patch }: JobProps) {
  const units = useUnits();
  return (
    <div class="pair">
      <TypedField
        label={WORDS.holdUp}
        limit={LIMITS.gunHoldUp}
        draft={draft.holdUp}
        onDraft={(holdUp) => patch({ holdUp })}
        hint={WORDS.holdUpHint(units)}
      />
      <NumberField
        label={WORDS.fillings}
        text={draft.fillings}
        onText={(fillings) => patch({ fillings })}
        hint={WORDS.fillingsHint}
        problem={fillingsOf(draft) === undefined ? WORDS.fillingsProblem : undefined}
      />
    </div>
  );
}
