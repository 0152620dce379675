import { useSignal } from '@preact/signals';
import { parseNumber } from '../../../logbook/as-typed';
import { Choice } from '../../../parts/fields/choice';
import { NumberField } from '../../../parts/fields/number-field';
import { SelectField } from '../../../parts/fields/select-field';
import { Page, Section } from '../../../parts/frame/page';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { dropFillApplications, dropFillVolumeM3 } from '../../../science/film/drop-fill';
import { jarAmount } from '../../../shop/jar/amount';
import { AMOUNT_WORDS, FILL_WORDS as WORDS } from '../../../words/mix/tools';
import { numberWords } from '../../../words/quantities';

const MOUNDS = ['1', '1.25', '1.5'] as const;
type Mound = (typeof MOUNDS)[number];
const MANUAL = 'manual';
const MM = [{ value: 'mm', label: 'mm' }] as const;

interface FillDraft {
  readonly depthMm: string;
  readonly lengthMm: string;
  readonly widthMm: string;
  /** Where length times width does not tell it. */
  readonly areaMm2: string;
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

const NO_SIZE = { depthMm: '', lengthMm: '', widthMm: '', areaMm2: '' } as const;

/** The area of a chip: as said, or length times width; undefined while neither is whole, mm2. */
function areaMm2Of({ lengthMm, widthMm, areaMm2 }: FillDraft): number | undefined {
  if (areaMm2.trim() !== '') return within(areaMm2, 1e-3, 10_000);
  const [length, width] = [within(lengthMm, 1e-3, 1000), within(widthMm, 1e-3, 1000)];
  return length !== undefined && width !== undefined ? length * width : undefined;
}

/** How many drops fill a chip, and how much that takes. */
export function FillPage() {
  const draft = useSignal<FillDraft>({ ...NO_SIZE, solids: '22', mound: '1.25', rest: '5' });
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
        <NumberField
          label={WORDS.length}
          text={draft.lengthMm}
          onText={(lengthMm) => patch({ lengthMm })}
          units={MM}
          problem={problemOf(draft.lengthMm, 1e-3, 1000, WORDS.sideProblem)}
        />
        <NumberField
          label={WORDS.width}
          text={draft.widthMm}
          onText={(widthMm) => patch({ widthMm })}
          units={MM}
          problem={problemOf(draft.widthMm, 1e-3, 1000, WORDS.sideProblem)}
        />
        <NumberField
          label={WORDS.depth}
          text={draft.depthMm}
          onText={(depthMm) => patch({ depthMm })}
          units={MM}
          problem={problemOf(draft.depthMm, 1e-3, 20, WORDS.depthProblem)}
        />
        <NumberField
          label={WORDS.size}
          hint={WORDS.sizeHint}
          text={draft.areaMm2}
          onText={(areaMm2) => patch({ areaMm2 })}
          units={[{ value: 'mm2', label: 'mm²' }]}
          problem={problemOf(draft.areaMm2, 1e-3, 10_000, WORDS.sizeProblem)}
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
      options={[
        { value: MANUAL, label: WORDS.noJar },
        ...jars.map(({ id, name }) => ({ value: id, label: name })),
      ]}
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
  const depthMm = within(draft.depthMm, 1e-3, 20);
  const areaMm2 = areaMm2Of(draft);
  const solids = within(draft.solids, 0.1, 65);
  const rest = within(draft.rest, 0.1, 99);
  if (depthMm === undefined || areaMm2 === undefined || solids === undefined || rest === undefined)
    return null;
  const chip = {
    depthM: depthMm / 1000,
    areaM2: areaMm2 / 1e6,
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
      <p class="digits">{WORDS.takes(numberWords(dropFillVolumeM3(chip) * 1e6, 3))}</p>
      <p>{WORDS.rhythm(WORDS.days(Math.ceil(count / 3), Math.ceil(count / 2)))}</p>
    </Section>
  );
}
