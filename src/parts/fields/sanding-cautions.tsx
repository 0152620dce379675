import { cautionsFor } from '../../reminders/cautions';
import { CautionRow } from '../blocks/caution';
import { useShop } from '../frame/shop-context';

/** The cautions before any sanding, a line each. What is to be said of lead the judge says. */
export function SandingCautions() {
  const { shop } = useShop();
  const dust = cautionsFor('sand', [], [...shop.value.silencedCautions]);
  return (
    <ul class="caution-rows">
      {dust.map((caution) => (
        <li key={caution.id}>
          <CautionRow caution={caution} />
        </li>
      ))}
    </ul>
  );
}
