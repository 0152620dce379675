import { useUnits } from '../../../parts/frame/shop-context';
import { dryFilm } from '../../../science/film/thickness';
import { umToMetres } from '../../../units';
import { JAR_FORM } from '../../../words/mix/jar';
import { filmWords, numberWords } from '../../../words/quantities';
import { isWhole, type JarDraft } from './jar-draft';
import { mixSolids } from './mix-solids';

const A_WET_COAT_M = umToMetres(100);

/** What the draft comes to, while it is being typed. */
export function Outcome({ draft }: { readonly draft: JarDraft }) {
  const units = useUnits();
  const solids = isWhole(draft) ? mixSolids(draft) : undefined;
  return (
    <div class="outcome" aria-live="polite">
      {solids === undefined ? null : solids === 'too-thin' ? (
        <p>{JAR_FORM.tooThin}</p>
      ) : (
        <>
          <p class="outcome-figure digits">
            {JAR_FORM.outcomeSolids(numberWords(solids * 100, 1), draft.comesAs)}
          </p>
          <p>
            {JAR_FORM.outcomeFilm(
              filmWords(A_WET_COAT_M, units),
              filmWords(dryFilm(A_WET_COAT_M, solids), units),
            )}
          </p>
        </>
      )}
    </div>
  );
}
