import { CautionRows } from '../../../parts/blocks/caution';
import { Section } from '../../../parts/blocks/page';
import { useShop } from '../../../parts/frame/shop-context';
import { cautionsFor } from '../../../reminders/cautions';
import { ingredientHazards } from '../../../shop/jar/hazards';
import { WHO_DECIDES } from '../../../words/air/cautions';
import { PLAN_WORDS } from '../../../words/mix/weigh';

/** What to mind before these ingredients are poured together. */
export function MixCautions({ ingredients }: { readonly ingredients: readonly string[] }) {
  const { shop } = useShop();
  const cautions = cautionsFor('mix', ingredientHazards(ingredients, shop.value));
  return (
    <Section title={PLAN_WORDS.cautions}>
      <CautionRows cautions={cautions} />
      <p class="quiet">{WHO_DECIDES}</p>
    </Section>
  );
}
