import { useSignal } from '@preact/signals';
import { parseNumber, readTyped } from '../../../logbook/as-typed';
import { LIMITS, type Limit } from '../../../logbook/limits';
import { Page, Section } from '../../../parts/blocks/page';
import { Choice } from '../../../parts/fields/choice';
import { NumberField } from '../../../parts/fields/number-field';
import { named, SelectField } from '../../../parts/fields/select-field';
import { type Draft, TypedField } from '../../../parts/fields/typed-field';
import { linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { dropFillApplications, dropFillVolumeM3 } from '../../../science/film/drop-fill';
import { jarAmount } from '../../../shop/jar/amount';
import { AMOUNT_WORDS, FILL_WORDS as WORDS } from '../../../words/mix/tools';
import { numberWords } from '../../../words/quantities';
import { volumeWords } from '../../../words/volumes';

const MOUNDS = ['1', '1.25', '1.5'] as const;
type Mound = (typeof MOUNDS)[number];
const MANUAL = 'manual';

type Side = Draft<'mm' | 'cm' | 'in'>;
interface FillDraft {
  readonly depth: Draft<'mm' | 'in'>;
  readonly length: Side;
  readonly width: Side;
  /** Where length times width does not tell it. */
  readonly area: Draft<'mm2' | 'cm2' | 'in2'>;
  readonly solids: string;
  readonly mound: Mound;
  readonly rest: string;
}

const within = (text: string, lowest: number, highest: number): number | undefined => {
  const value = parseNumber(text);
  return value !== undefined && value >= lowest && value <= highest ? value : undefined;
};
const problemOf = (text: string, lowest: number, highest: number, words: string): string | undefined =>
  text.trim() === '' || within(text, lowest, highest) !== undefined ? undefined : words;

/** In SI; undefined while it cannot be read. */
function said(draft: Draft, limit: Limit): number | undefined {
  const read = readTyped(draft, limit);
  return read.ok ? read.value : undefined;
}

/** The area of a chip: as said, or length times width; undefined while neither is whole, m2. */
function areaM2Of({ length, width, area }: FillDraft): number | undefined {
  if (area.text.trim() !== '') return said(area, LIMITS.zoneArea);
  const [lengthM, widthM] = [said(length, LIMITS.zoneSide), said(width, LIMITS.zoneSide)];
  return lengthM !== undefined && widthM !== undefined ? lengthM * widthM : undefined;
}

function noSize(isUs: boolean): Pick<FillDraft, 'depth' | 'length' | 'width' | 'area'> {
  const side = { text: '', unit: isUs ? 'in' : 'mm' } as const;
  return { depth: side, length: side, width: side, area: { text: '', unit: isUs ? 'in2' : 'mm2' } };
}

/** How many drops fill a chip, and how much that takes. */
export function FillPage() {
  const isUs = useUnits() === 'us';
  const draft = useSignal<FillDraft>({ ...noSize(isUs), solids: '22', mound: '1.25', rest: '5' });
  const patch = (some: Partial<FillDraft>) => {
    draft.value = { ...draft.value, ...some };
  };
  return (
    <Page title={WORDS.title} backTo={linkTo('mix')}>
      <p>{WORDS.lead}</p>
      <Section title={WORDS.sizes}>
        <Fields draft={draft.value} patch={patch} />
      </Section>
      <Answer draft={draft.value} />
    </Page>
  );
}

interface FieldsProps {
  readonly draft: FillDraft;
  readonly patch: (some: Partial<FillDraft>) => void;
}

function Fields({ draft, patch }: FieldsProps) {
  return (
    <>
      <div class="pair">
        <TypedField
          label={WORDS.length}
          limit={LIMITS.zoneSide}
          draft={draft.length}
          onDraft={(length) => patch({ length })}
        />
        <TypedField
          label={WORDS.width}
          limit={LIMITS.zoneSide}
          draft={draft.width}
          onDraft={(width) => patch({ width })}
        />
        <TypedField
          label={WORDS.depth}
          limit={LIMITS.zoneDepth}
          draft={draft.depth}
          onDraft={(depth) => patch({ depth })}
        />
        <TypedField
          label={WORDS.size}
          hint={WORDS.sizeHint}
          limit={LIMITS.zoneArea}
          draft={draft.area}
          onDraft={(area) => patch({ area })}
        />
      </div>
      <FromJar patch={patch} />
      <NumberField
        label={WORDS.solids}
        text={draft.solids}
        onText={(solids) => patch({ solids })}
        units={[{ value: '%', label: '%' }]}
        hint={WORDS.solidsHint}
        problem={problemOf(draft.solids, 0.1, 65, WORDS.solidsProblem)}
      />
      <Choice
        label={WORDS.mound}
        options={MOUNDS.map((value) => ({ value, ...WORDS.mounds[value] }))}
        value={draft.mound}
        onChange={(mound) => patch({ mound })}
      />
      <NumberField
        label={WORDS.rest}
        text={draft.rest}
        onText={(rest) => patch({ rest })}
        units={[{ value: '%', label: '%' }]}
        problem={problemOf(draft.rest, 0.1, 99, WORDS.restProblem)}
      />
    </>
  );
}

/** The solids of a jar on the shelf. */
function FromJar({ patch }: Pick<FieldsProps, 'patch'>) {
  const { shop } = useShop();
  const jars = [...shop.value.jars.values()].filter(({ emptiedMs }) => emptiedMs === undefined);
  const chosen = useSignal(MANUAL);
  if (jars.length === 0) return null;
  return (
    <SelectField
      label={WORDS.fromJar}
      options={[{ value: MANUAL, label: WORDS.noJar }, ...named(jars)]}
      value={chosen.value}
      onChange={(id) => {
        chosen.value = id;
        const jar = shop.value.jars.get(id);
        if (jar) patch({ solids: numberWords(jarAmount(jar, shop.value).volumeSolids * 100, 1) });
      }}
    />
  );
}

function Answer({ draft }: { readonly draft: FillDraft }) {
  const units = useUnits();
  const depthM = said(draft.depth, LIMITS.zoneDepth);
  const areaM2 = areaM2Of(draft);
  const solids = within(draft.solids, 0.1, 65);
  const rest = within(draft.rest, 0.1, 99);
  if (depthM === undefined || areaM2 === undefined || solids === undefined || rest === undefined) return null;
  const chip = {
    depthM,
    areaM2,
    moundFactor: Number(draft.mound),
    volumeSolids: solids / 100,
    rest: rest / 100,
  };
  const count = dropFillApplications(chip);
  return (
    <Section title={AMOUNT_WORDS.takes}>
      <p class="outcome-figure digits" role="status">
        {WORDS.answer(count)}
      </p>
      <p class="digits">{WORDS.takes(volumeWords(dropFillVolumeM3(chip), units))}</p>
      <p>{WORDS.rhythm(WORDS.days(Math.ceil(count / 3), Math.ceil(count / 2)))}</p>
    </Section>
  );
}
