import { Button } from '../../../parts/blocks/button';
import { Problem } from '../../../parts/fields/choice';
import { NumberField } from '../../../parts/fields/number-field';
import { SelectField } from '../../../parts/fields/select-field';
import { SOLVENTS } from '../../../science/solvents/solvents';
import { JAR_FORM } from '../../../words/mix/jar';
import { numberWords } from '../../../words/quantities';
import { type BlendRow, blendProblem, blendSum } from './jar-draft';

const OPTIONS = SOLVENTS.map(({ id, name }) => ({ value: id as string, label: name })).sort((a, b) =>
  a.label.localeCompare(b.label, 'en'),
);

export interface BlendRowsProps {
  readonly legend: string;
  readonly blend: readonly BlendRow[];
  readonly onBlend: (blend: readonly BlendRow[]) => void;
  readonly isTried: boolean;
}

/** A blend of solvents, row by row. */
export function BlendRows({ legend, blend, onBlend, isTried }: BlendRowsProps) {
  const change = (index: number, row: Partial<BlendRow>) =>
    onBlend(blend.map((old, i) => (i === index ? { ...old, ...row } : old)));
  return (
    <fieldset class="choice stack">
      <legend>{legend}</legend>
      {[...blend.entries()].map(([i, row]) => (
        <div class="pair" key={i}>
          <SelectField
            label={JAR_FORM.solvent(i + 1)}
            options={OPTIONS}
            value={row.solvent}
            prompt={JAR_FORM.chooseSolvent}
            onChange={(solvent) => change(i, { solvent })}
          />
          <NumberField
            label={JAR_FORM.share(i + 1)}
            text={row.share}
            onText={(share) => change(i, { share })}
            units={[{ value: '%', label: '%' }]}
          />
          {blend.length > 1 && (
            <Button
              kind="plain"
              icon="remove"
              onClick={() => onBlend(blend.filter((_, other) => other !== i))}
            >
              {JAR_FORM.takeOut(i + 1)}
            </Button>
          )}
        </div>
      ))}
      <Problem id="blend-problem" text={isTried ? blendProblem(blend) : undefined} />
      <div class="acts">
        <Button icon="add" addsRow onClick={() => onBlend([...blend, { solvent: undefined, share: '' }])}>
          {JAR_FORM.addSolvent}
        </Button>
      </div>
      <p class="hint digits">{JAR_FORM.blendSum(numberWords(blendSum(blend), 1))}</p>
    </fieldset>
  );
}
