import { Fold } from '../../../parts/blocks/fold';
import { type Blend, volumeFractions } from '../../../science/solvents/blend';
import { blendEvaporationRate, driedTo, leavingOrder } from '../../../science/solvents/blend-drying';
import { RECIPE_WORDS as WORDS } from '../../../words/mix/recipe';
import { numberWords, percentWords } from '../../../words/quantities';

/** Which solvent leaves first: the blend now, half gone, and with a tenth left. */
export function Leaving({ blend }: { readonly blend: Blend }) {
  const stages = [blend, driedTo(blend, 0.5).blend, driedTo(blend, 0.1).blend].map((stage) => ({
    stage,
    fractions: volumeFractions(stage),
  }));
  const shareOf = (id: string, { stage, fractions }: (typeof stages)[number]): number =>
    fractions[stage.findIndex(({ solvent }) => solvent.id === id)] ?? 0;
  return (
    <Fold title={WORDS.solvents} brief={leavingOrder(blend)[0]?.name}>
      <table class="table">
        <thead>
          <tr>
            <th scope="col">{WORDS.leaves}</th>
            <th scope="col">{WORDS.share}</th>
            <th scope="col">{WORDS.halfGone}</th>
            <th scope="col">{WORDS.tenthLeft}</th>
          </tr>
        </thead>
        <tbody>
          {leavingOrder(blend).map(({ id, name }) => (
            <tr key={id}>
              <th scope="row">{name}</th>
              {[...stages.entries()].map(([i, stage]) => (
                <td key={i} class="digits">
                  {percentWords(shareOf(id, stage))}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p class="quiet small">
        {WORDS.rate}: {numberWords(blendEvaporationRate(blend), 1)}. {WORDS.leavesText}
      </p>
    </Fold>
  );
}
