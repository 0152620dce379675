import { toInstantMs } from '../../planner/local-day';
import { boundWords, type Names, stepName, whyWords } from '../../planner/say';
import { coatsTold } from '../../shop/stack/layers-left';
import type { Reason } from '../../verdicts/reason';
import { isFoundSoft } from '../../verdicts/rules/film';
import { type OwnerFacts, setAsideWords } from '../../words/plan/owner';
import { dateWords, dayWords } from '../../words/times';
import type { OpenShop } from '../shop';
import { verdictFor } from '../verdicts/verdict-for';
import { followPlan } from './follow-plan';

/** What there is to tell an owner about a piece; undefined while there is no plan for it. */
export function ownerFacts(
  open: OpenShop,
  pieceId: string,
  names: Names,
  tell: (reason: Reason) => string,
): OwnerFacts | undefined {
  const { planned, moved } = followPlan(open);
  const { bench, plan } = planned.value;
  const found = plan.ok ? plan.value.pieces.find((one) => one.pieceId === pieceId) : undefined;
  if (!plan.ok || !found || !open.shop.value.plans.has(pieceId)) return undefined;
  const nowMs = toInstantMs(bench.now);
  const day = (minute: number): string => dateWords(toInstantMs(minute), nowMs);
  const steps = plan.value.steps.filter((one) => one.pieceId === pieceId);
  const coatsToCome = steps.filter(
    ({ step, isDone }) => step.kind === 'work' && step.isCoat === true && !isDone,
  ).length;
  const piece = open.shop.value.pieces.get(pieceId);
  const coats = piece ? coatsTold(piece, open.shop.value) : [];
  const coatsOn = coats.filter(({ how }) => how !== 'flash').length;
  const promise = verdictFor(open, pieceId, { act: 'promise' });
  const next = steps.find(({ isDone, kind }) => !isDone && (kind === 'work' || kind === 'gate'));
  const promised = bench.pieces.find(({ id }) => id === pieceId)?.promised;
  const slipped = moved.value?.moved.find((one) => one.pieceId === pieceId);
  return {
    piece: names.piece(pieceId),
    promiseFrom: day(found.promise),
    promised: promised === undefined ? undefined : day(promised),
    isPromiseKept: found.promiseState !== 'missed' && found.promiseState !== 'past',
    earliest: day(found.earliest),
    likely: day(found.likely),
    coatsDone: coatsOn,
    coatsPlanned: coatsOn + coatsToCome,
    next: next && stepName(next.step),
    nextWhen: next && dayWords(toInstantMs(next.start), nowMs),
    why: slipped ? whyWords(slipped.why, names) : next && reason(next.bound, names),
    settled: settledDay(open, pieceId, nowMs),
    isHeld: found.isHeld,
    setAside: (promise?.reasons ?? []).flatMap((one) =>
      one.override ? [setAsideWords(tell(one), one.override.reason)] : [],
    ),
  };
}

/** What holds the next step up, where it is more than the step before it. */
const reason = (bound: Parameters<typeof boundWords>[0], names: Names): string | undefined =>
  bound.by === 'step' || bound.by === 'now' || bound.by === 'done' ? undefined : boundWords(bound, names);

function settledDay({ shop, outlooks }: OpenShop, pieceId: string, nowMs: number): string | undefined {
  const piece = shop.value.pieces.get(pieceId);
  const outlook = outlooks.value.get(pieceId);
  if (outlook?.state !== 'ready' || (piece && isFoundSoft(piece))) return undefined;
  const atMs = outlook.startMs + outlook.estimate.milestones.settled.lateS * 1000;
  return Number.isFinite(atMs) && atMs > nowMs ? dateWords(atMs, nowMs) : undefined;
}
