import type { BandMs } from '../words/times';
import type { Act, Question } from './act';
import type { Facts } from './facts';
import type { Finding, Reason, Rule, Weight } from './reason';
import { RULES } from './rules';

/** The four words that every page says of an act. There are no others for the same thing. */
export type VerdictWord = 'ready' | 'perhaps' | 'wait' | 'hold';

/** Whether something may be done now, with what speaks against it, the heaviest first. */
export interface Verdict {
  readonly act: Act;
  readonly word: VerdictWord;
  /** When time alone makes it ready. */
  readonly until: BandMs | undefined;
  readonly reasons: readonly Reason[];
}

const WEIGHTS: readonly Weight[] = ['hold', 'wait', 'caution', 'note'];

/** The one judge: what may be done now, and why not. */
export function verdictOn(question: Question, facts: Facts): Verdict {
  const reasons = reasonsOn(question, facts).sort(
    (one, other) => WEIGHTS.indexOf(weightOf(one)) - WEIGHTS.indexOf(weightOf(other)),
  );
  const until = latest(reasons.flatMap(({ weight, until }) => (weight === 'wait' && until ? [until] : [])));
  return { act: question.act, word: wordOf(reasons, facts.nowMs), until, reasons };
}

/** What still holds it up: holds that were not set aside. */
export const holdsOf = ({ reasons }: Verdict): readonly Reason[] => reasons.filter(isHold);

/** Whether it holds, and nobody has set it aside. */
const isHold = ({ weight, override }: Reason): boolean => weight === 'hold' && override === undefined;

/** A hold that was set aside is told as a caution. */
const weightOf = ({ weight, override }: Reason): Weight => (override ? 'caution' : weight);

function reasonsOn(question: Question, facts: Facts): Reason[] {
  const own = RULES.filter(({ acts }) => acts.includes(question.act)).flatMap((rule) =>
    reasonFrom(rule, rule.look(facts, question), facts),
  );
  return question.act === 'promise' ? [...own, ...ahead(own, facts)] : own;
}

/** No date is promised while anything still to come is held. */
function ahead(own: readonly Reason[], facts: Facts): readonly Reason[] {
  const found = new Map<string, Reason>();
  for (const act of facts.coming)
    for (const reason of act === 'promise' ? [] : reasonsOn({ act }, facts))
      if (reason.weight === 'hold' && !own.some(({ rule }) => rule === reason.rule))
        found.set(reason.rule, reason);
  return [...found.values()];
}

function reasonFrom(rule: Rule, found: Finding | undefined, { overrides }: Facts): Reason[] {
  if (!found) return [];
  const mayBeOverridden = rule.isNeverOverridden !== true;
  const since = found.sinceMs ?? Number.NEGATIVE_INFINITY;
  const override =
    found.weight === 'hold' && mayBeOverridden
      ? overrides.findLast((one) => one.rule === rule.name && one.atMs >= since)
      : undefined;
  const source = found.source ?? rule.source;
  return [{ ...found, rule: rule.name, source, mayBeOverridden, override }];
}

function wordOf(reasons: readonly Reason[], nowMs: number): VerdictWord {
  if (reasons.some(isHold)) return 'hold';
  const waits = reasons.filter(({ weight }) => weight === 'wait');
  if (waits.some(({ until }) => !until || nowMs < until.earliestMs)) return 'wait';
  return waits.some(({ until }) => until && nowMs < until.likelyMs) ? 'perhaps' : 'ready';
}

function latest(bands: readonly BandMs[]): BandMs | undefined {
  const [first, ...more] = bands;
  return (
    first &&
    more.reduce<BandMs>(
      (all, { earliestMs, likelyMs, lateMs }) => ({
        earliestMs: Math.max(all.earliestMs, earliestMs),
        likelyMs: Math.max(all.likelyMs, likelyMs),
        lateMs: Math.max(all.lateMs, lateMs),
      }),
      first,
    )
  );
}
