import type { ComponentChildren } from 'preact';
import type { Piece } from '../../logbook/fold/pieces';
import { cautionsFor } from '../../reminders/cautions';
import { oldFinishOf, sandingRule } from '../../shop/stack/old-finish';
import { cautionOf } from '../../words/air/cautions';
import { OLD_WORDS } from '../../words/piece/old-finish';
import { LinkButton } from '../frame/button';
import { CautionNotice } from '../frame/caution';
import { Notice } from '../frame/notice';
import { linkTo } from '../frame/route';
import { useShop } from '../frame/shop-context';

interface SandingGateProps {
  readonly piece: Piece;
  readonly children: ComponentChildren;
}

/** Keeps dry sanding of an old opaque finish shut until it is tested for lead, or treated as lead. */
export function SandingGate({ piece, children }: SandingGateProps) {
  const { shop } = useShop();
  const record = oldFinishOf(piece.id, shop.value);
  const rule = sandingRule(record);
  const dust = cautionsFor('sand', [], [...shop.value.silencedCautions]);
  const isOld = piece.base === 'old-redissolves' || piece.base === 'old-closed';
  const toTests = (
    <div class="acts">
      <LinkButton href={linkTo('piece', piece.id, 'old')}>{OLD_WORDS.title}</LinkButton>
    </div>
  );
  if (rule === 'test-first')
    return (
      <>
        <CautionNotice caution={cautionOf('lead')} />
        <p>
          <strong>{OLD_WORDS.leadState[rule]}</strong>
        </p>
        {toTests}
      </>
    );
  return (
    <>
      {rule === 'wet-only' && (
        <Notice kind="stop" title={OLD_WORDS.lead}>
          <p>{OLD_WORDS.leadState[rule]}</p>
        </Notice>
      )}
      {isOld && record.seen === undefined && (
        <Notice kind="caution">
          <p>{OLD_WORDS.notLookedAt}</p>
          {toTests}
        </Notice>
      )}
      {dust.map((caution) => (
        <CautionNotice key={caution.id} caution={caution} />
      ))}
      {children}
    </>
  );
}
