import { Notice } from '../../parts/blocks/notice';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { PLAN_WORDS } from '../../words/plan/plan';
import { usePlan } from './use-plan';

/** Pieces that the plan leaves out, by name, each with the way to the page that says why; of one piece, only whether it is one of them. */
export function LeftOut({ pieceId }: { readonly pieceId?: string }) {
  const { pieces } = useShop().shop.value;
  const out = usePlan().planned.value.bench.pieces.filter(
    ({ id, isLeftOut }) => isLeftOut && (pieceId === undefined || id === pieceId),
  );
  if (out.length === 0) return null;
  return (
    <Notice kind="stop" title={PLAN_WORDS.leftOutTitle}>
      <ul class="missed">
        {out.map(({ id }) => (
          <li key={id}>
            <a href={linkTo('piece', id)}>{pieces.get(id)?.name}</a>
          </li>
        ))}
      </ul>
      <p>{PLAN_WORDS.leftOut}</p>
    </Notice>
  );
}
