import { Fold } from '../../../parts/blocks/fold';
import { glued } from '../../../words/glued';
import { MOVES_WORDS } from '../../../words/piece/why';
import { spanWords } from '../../../words/times';
import type { CurveProps } from './curve-axes';

const A_MINUTE_S = 60;

/** Later or earlier by how much; undefined for a shift that is not known. */
export function shiftWords(shiftS: number): string {
  if (!Number.isFinite(shiftS)) return MOVES_WORDS.much;
  if (Math.abs(shiftS) < A_MINUTE_S) return MOVES_WORDS.same;
  const span = spanWords(Math.abs(shiftS) * 1000);
  return shiftS < 0 ? MOVES_WORDS.earlier(span) : MOVES_WORDS.later(span);
}

/** By the rule of thumb the time left halves or doubles for 10 K, so 5 K is the square root of that. */
const RULE_OF_THUMB: Readonly<Record<string, number>> = { warmer: 2 ** -0.5 - 1, cooler: 2 ** 0.5 - 1 };

const NAMES: Readonly<Record<string, string>> = MOVES_WORDS.names;

/** What would bring level-sanding and rubbing out nearer or push them away, and by how much. */
export function WhatMoves({ estimate, startMs, nowMs }: CurveProps) {
  const leftS = estimate.milestones.level.likelyS - (nowMs - startMs) / 1000;
  if (!(leftS > A_MINUTE_S)) return null;
  const moves = estimate.whatIf.map(({ name, levelS, rubOutS }) => {
    const share = RULE_OF_THUMB[name];
    return {
      name: NAMES[name] ?? name,
      levelS,
      rubOutS,
      thumbS: share === undefined ? undefined : share * leftS,
    };
  });
  if (estimate.oneMoreCoat)
    moves.unshift({ name: MOVES_WORDS.oneMore, ...estimate.oneMoreCoat, thumbS: undefined });
  const isColdSooner = estimate.whatIf.some(({ name, levelS }) => name === 'cooler' && levelS < -A_MINUTE_S);
  return (
    <Fold isOpen title={MOVES_WORDS.title}>
      <p>{MOVES_WORDS.lead}</p>
      <dl class="fact-list">
        {moves.map(({ name, levelS, rubOutS, thumbS }) => (
          <div key={name}>
            <dt>{glued(name)}</dt>
            <dd>
              <strong>{glued(shiftWords(levelS))}</strong>
              <span class="quiet small">{glued(MOVES_WORDS.rubOut(shiftWords(rubOutS)))}</span>
              {thumbS !== undefined && (
                <span class="quiet small">{glued(MOVES_WORDS.ruleOfThumb(shiftWords(thumbS)))}</span>
              )}
            </dd>
          </div>
        ))}
      </dl>
      {isColdSooner && <p>{MOVES_WORDS.feeds}</p>}
      <p class="quiet small">{MOVES_WORDS.both}</p>
    </Fold>
  );
}
