import type { Piece } from '../../../logbook/fold/piece/pieces';
import { LinkButton } from '../../../parts/blocks/button';
import { Fold } from '../../../parts/blocks/fold';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { findingOf, hasLayers, oldFinishOf, sandingRule } from '../../../shop/stack/old-finish';
import { OLD_WORDS as WORDS } from '../../../words/piece/old-finish';
import { findingWords } from './finding-words';

/** What is known of the old finish on a piece, with the way to its tests; nothing where there is none. */
export function OldFinishSummary({ piece }: { readonly piece: Piece }) {
  const record = oldFinishOf(piece.id, useShop().shop.value);
  const { tests, seen, lead } = record;
  const isOld = piece.base === 'old-redissolves' || piece.base === 'old-closed';
  const isKnown = tests.length > 0 || seen !== undefined;
  if (!isOld && !isKnown && !lead) return null;
  const asked = sandingRule(record) === 'test-first' ? 'test-first' : undefined;
  const leadWord = lead && lead.finding !== 'untested' ? lead.finding : asked;
  return (
    <Fold title={WORDS.title} brief={isKnown ? undefined : WORDS.summary.untested} isOpen={isKnown}>
      {isKnown && <p class="margin-label">{findingWords(findingOf(record), seen?.opaque ?? false)}</p>}
      {!isKnown && <p class="quiet">{WORDS.summary.untestedText}</p>}
      {hasLayers(record) && <p>{seen?.layersSeen ?? WORDS.several}</p>}
      {leadWord && <p>{WORDS.summary.lead[leadWord]}</p>}
      <div class="acts">
        <LinkButton icon="check" href={linkTo('piece', piece.id, 'old')}>
          {isKnown ? WORDS.summary.link : WORDS.summary.test}
        </LinkButton>
      </div>
    </Fold>
  );
}
