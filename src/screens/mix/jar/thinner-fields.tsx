import { thinnerSorts } from '../../../actions/mix/usual-jar';
import { finishTraits } from '../../../estimator/finishes/traits';
import { parseNumber } from '../../../logbook/as-typed';
import { LIMITS } from '../../../logbook/limits';
import { Choice } from '../../../parts/fields/choice';
import { SelectField } from '../../../parts/fields/select-field';
import { TextField } from '../../../parts/fields/text-field';
import { TypedField } from '../../../parts/fields/typed-field';
import { useShop } from '../../../parts/frame/shop-context';
import { SOLVENTS } from '../../../science/solvents/solvents';
import { USUAL_RETARDER } from '../../../shop/jar/own-solvents';
import { JAR_FORM } from '../../../words/mix/jar';
import { numberWords } from '../../../words/quantities';
import { BlendRows } from './blend-rows';
import { type BlendRow, type JarDraft, thinnerNameProblem, thinningLimit } from './jar-draft';

export interface PartProps {
  readonly draft: JarDraft;
  readonly patch: (some: Partial<JarDraft>) => void;
  readonly isTried: boolean;
}

/** How much thinner, and of what. */
export function ThinningFields({ draft, patch, isTried }: PartProps) {
  return (
    <>
      <TypedField
        label={JAR_FORM.thinning}
        limit={thinningLimit(draft.of)}
        draft={draft.thinning}
        onDraft={(thinning) => patch({ thinning })}
        hint={otherWay(draft)}
        isTried={isTried}
      />
      <Choice
        label={JAR_FORM.of}
        options={[
          { value: 'lacquer', ...JAR_FORM.ofLacquer },
          { value: 'mix', ...JAR_FORM.ofMix },
        ]}
        value={draft.of}
        onChange={(of) => patch({ of })}
      />
    </>
  );
}

/** Which thinner: a usual sort, or one of one's own. */
export function ThinnerFields({ draft, patch, isTried }: PartProps) {
  const sorts = [...thinnerSorts(draft.finish), 'own' as const];
  return (
    <>
      <Choice
        label={JAR_FORM.thinner}
        options={sorts.map((value) => ({ value, ...JAR_FORM.thinnerSorts[value] }))}
        value={draft.thinnerSort}
        onChange={(thinnerSort) => patch({ thinnerSort })}
      />
      {draft.thinnerSort === 'own' && <OwnThinner {...{ draft, patch, isTried }} />}
    </>
  );
}

/** The same thinning said of the other whole, so that the two are never confused. */
function otherWay({ thinning, of }: JarDraft): string | undefined {
  const percent = parseNumber(thinning.text);
  if (percent === undefined || percent < 0 || (of === 'mix' && percent >= 100)) return undefined;
  return of === 'lacquer'
    ? JAR_FORM.sameOfMix(numberWords((100 * percent) / (100 + percent), 1))
    : JAR_FORM.sameOfLacquer(numberWords((100 * percent) / (100 - percent), 1));
}

function OwnThinner({ draft, patch, isTried }: PartProps) {
  const kept = useKeptThinners();
  return (
    <>
      {kept.length > 0 && (
        <SelectField
          label={JAR_FORM.keptThinner}
          prompt={JAR_FORM.keptPrompt}
          options={kept.map(({ name }) => ({ value: name, label: name }))}
          value={kept.some(({ name }) => name === draft.thinnerName) ? draft.thinnerName : undefined}
          onChange={(chosen) => {
            const thinner = kept.find(({ name }) => name === chosen);
            if (thinner) patch({ thinnerName: thinner.name, blend: rowsOf(thinner.blend) });
          }}
        />
      )}
      <TextField
        label={JAR_FORM.thinnerName}
        text={draft.thinnerName}
        onText={(thinnerName) => patch({ thinnerName })}
        problem={isTried ? thinnerNameProblem(draft) : undefined}
      />
      <BlendRows
        legend={JAR_FORM.blend}
        blend={draft.blend}
        onBlend={(blend) => patch({ blend })}
        isTried={isTried}
      />
    </>
  );
}

/** Thinners of this shop by name: of its ingredients, and of its jars, the newest of a name. */
function useKeptThinners() {
  const { shop } = useShop();
  const { ingredients, jars } = shop.value;
  const described = [...ingredients.values()].flatMap(({ is, name, solvents, putAwayMs }) =>
    is === 'thinner' && solvents && putAwayMs === undefined ? [{ name, blend: solvents.value }] : [],
  );
  const poured = [...jars.values()].filter(({ weighUp, boxedFrom }) => !weighUp && !boxedFrom);
  const all = [...poured.map(({ thinner }) => thinner), ...described];
  return [...new Map(all.map((thinner) => [thinner.name, thinner])).values()];
}

/** A blend as rows of percentages. */
export const rowsOf = (
  blend: readonly { readonly solvent: string; readonly share: number }[],
): readonly BlendRow[] =>
  blend.map(({ solvent, share }) => ({ solvent, share: String(Number((share * 100).toPrecision(4))) }));

const RETARDERS = SOLVENTS.filter(({ relativeEvaporationRate }) => relativeEvaporationRate < 0.5).map(
  ({ id, name }) => ({ value: id as string, label: name }),
);

/** A retarder, or none. */
export function RetarderFields({ draft, patch, isTried }: PartProps) {
  if (!finishTraits(draft.finish).takesRetarder) return null;
  return (
    <>
      <Choice
        label={JAR_FORM.retarder}
        options={[
          { value: 'none', label: JAR_FORM.noRetarder },
          { value: 'some', label: JAR_FORM.withRetarder },
        ]}
        value={draft.retarder === undefined ? 'none' : 'some'}
        onChange={(some) => patch({ retarder: some === 'some' ? USUAL_RETARDER : undefined })}
      />
      {draft.retarder !== undefined && (
        <>
          <SelectField
            label={JAR_FORM.retarderSolvent}
            options={RETARDERS}
            value={draft.retarder}
            onChange={(retarder) => patch({ retarder })}
          />
          <TypedField
            label={JAR_FORM.retarderAmount}
            limit={LIMITS.retarderOfMix}
            draft={draft.retarderShare}
            onDraft={(retarderShare) => patch({ retarderShare })}
            hint={JAR_FORM.retarderHint}
            isTried={isTried}
          />
        </>
      )}
    </>
  );
}
