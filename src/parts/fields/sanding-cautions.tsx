import type { Piece } from '../../logbook/fold/pieces';
import { cautionsFor } from '../../reminders/cautions';
import { oldFinishOf, sandingRule } from '../../shop/stack/old-finish';
import { cautionOf } from '../../words/air/cautions';
import { CautionNotice } from '../frame/caution';
import { useShop } from '../frame/shop-context';

/** The cautions before any sanding: of dust, and of lead where an old opaque finish is not tested. What holds it the judge says. */
export function SandingCautions({ piece }: { readonly piece: Piece }) {
  const { shop } = useShop();
  const rule = sandingRule(oldFinishOf(piece.id, shop.value));
  const dust = cautionsFor('sand', [], [...shop.value.silencedCautions]);
  return (
    <>
      {rule !== 'any' && <CautionNotice caution={cautionOf('lead')} />}
      {dust.map((caution) => (
        <CautionNotice key={caution.id} caution={caution} />
      ))}
    </>
  );
}
