import { SOFT_AGAIN_DAYS } from '../../planner/bench-times';
import { DAY_MS } from '../../units';
import type { Facts } from '../facts';
import type { Finding, Rule } from '../reason';

const AGAIN_AFTER_MS = SOFT_AGAIN_DAYS * DAY_MS;

/** A thumb printed: whatever the date says, nothing is sanded or handed over until a later check passes. */
export const filmPrints: Rule = {
  name: 'film-prints',
  acts: ['level-sand', 'rub-out', 'hand-over'],
  source: 'log',
  look: (facts) => failing(facts, ['print'], 'filmPrints'),
};

/** The paper gummed. */
export const filmGums: Rule = {
  name: 'film-gums',
  acts: ['level-sand', 'rub-out'],
  source: 'log',
  look: (facts) => failing(facts, ['gum'], 'filmGums'),
};

type Tried = Pick<Facts, 'checks'> & { readonly coats: readonly { readonly atMs: number }[] };

/** What was found last when the film was tried since its last coat. Paper asks more than a thumb: when it powders the print is past. */
function lastTry({ checks, coats }: Tried, tests: readonly string[]): Facts['checks'][number] | undefined {
  const lastCoatMs = coats.at(-1)?.atMs ?? 0;
  return checks.findLast(
    ({ test, result, atMs }) =>
      atMs >= lastCoatMs && (tests.includes(test) || (test === 'gum' && result === 'passes')),
  );
}

/** Whether a thumb or paper has found the film soft, and nothing later has found it hard. */
export const isFoundSoft = (tried: Tried): boolean =>
  ['print', 'gum'].some((test) => lastTry(tried, [test])?.result === 'fails');

function failing(
  facts: Facts,
  tests: readonly string[],
  says: 'filmPrints' | 'filmGums',
): Finding | undefined {
  const last = lastTry(facts, tests);
  if (last?.result !== 'fails') return undefined;
  const { atMs } = last;
  return {
    weight: 'hold',
    says,
    clearedBy: 'check',
    sinceMs: atMs,
    figures: { atMs: atMs + AGAIN_AFTER_MS },
  };
}
