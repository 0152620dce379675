import { FINISHES } from '../../../logbook/kinds/mix/jar';
import { SelectField } from '../../../parts/fields/select-field';
import { useShop } from '../../../parts/frame/shop-context';
import { searchRecipes } from '../../../shop/recipe/search';
import { FINISH_NAMES } from '../../../words/mix/jar';
import { AMOUNT_WORDS as WORDS } from '../../../words/mix/tools';
import { percentWords } from '../../../words/quantities';
import { keyOf, type Source, type SourceFacts, sourceOf } from './source';

/** A phone's list grows slow with thousands; the others are reached from their own page. */
const MOST_OFFERED = 100;

interface SourceFieldsProps {
  readonly source: Source;
  readonly facts: SourceFacts | undefined;
  readonly onSource: (source: Source) => void;
}

/** With what the job is done: its solids and its thinning come from there. */
export function SourceFields({ source, facts, onSource }: SourceFieldsProps) {
  const { shop } = useShop();
  const jars = [...shop.value.jars.values()].filter(({ emptiedMs }) => emptiedMs === undefined).reverse();
  const all = searchRecipes('', shop.value);
  const own = all.filter(({ id }) => source.from === 'recipe' && id === source.id);
  const recipes = [...new Set([...own, ...all.slice(0, MOST_OFFERED)])];
  const option = (value: Source, label: string) => ({ value: keyOf(value), label });
  return (
    <>
      <SelectField
        label={WORDS.source}
        options={[
          ...jars.slice(0, MOST_OFFERED).map(({ id, name }) => option({ from: 'jar', id }, name)),
          ...recipes.map(({ id, name }) => option({ from: 'recipe', id }, name)),
          ...FINISHES.map((finish) =>
            option({ from: 'finish', finish }, WORDS.usualOf(FINISH_NAMES[finish].label)),
          ),
        ]}
        value={keyOf(source)}
        onChange={(key) => onSource(sourceOf(key))}
      />
      {facts && <p class="quiet digits">{factWords(facts)}</p>}
    </>
  );
}

function factWords({ volumeSolids, thinnerOfLacquer }: SourceFacts): string {
  if (volumeSolids === undefined) return '';
  const thinner = thinnerOfLacquer ? percentWords(thinnerOfLacquer, 1) : undefined;
  return WORDS.sourceFacts(percentWords(volumeSolids, 1), thinner);
}
