import { lawOf } from '../../estimator/finishes/law-history';
import { totalLimitM } from '../../estimator/finishes/total-film';
import type { Shop } from '../../logbook/fold/fold';
import type { Coat, Piece } from '../../logbook/fold/pieces';
import type { Task } from '../../planner/step';
import { jarFilmAt } from '../../shop/jar/film-at';
import { planSteps } from '../../shop/plan/plan-steps';
import { findingOf, oldFinishOf, sandingRule } from '../../shop/stack/old-finish';
import { sheetOf } from '../../shop/stack/sheet-times';
import { dryFilmM } from '../../shop/stack/stack-events';
import type { Act, Question } from '../../verdicts/act';
import type { BuildFact, Facts, OldFinishFact } from '../../verdicts/facts';
import { isSanded, momentsOf } from '../../verdicts/moments';
import type { Outlook } from '../outlook/outlook';

/** A piece in its shop, at an instant. */
export interface Asked {
  readonly shop: Shop;
  readonly piece: Piece;
  readonly outlook: Outlook | undefined;
  readonly nowMs: number;
}

/** What the judge looks at, gathered from the live shop: for a piece, or for one of its zones, and for the jar in hand. */
export function factsOf({ shop, piece, outlook, nowMs }: Asked, { jarId }: Partial<Question> = {}): Facts {
  const worked = outlook?.state === 'ready' ? outlook : undefined;
  const law = worked && lawOf(worked.estimate);
  const ms = (s: number): number => (worked?.startMs ?? 0) + s * 1000;
  const until = law?.recoatUntil;
  const { startedMs, closedMs, base, coats, sandings, checks } = piece;
  const jar = shop.jars.get(jarId ?? coats.at(-1)?.jar ?? '');
  return {
    nowMs,
    startedMs,
    closedMs,
    base,
    coats: coats.map(({ atMs, how, jar }) => ({ atMs, how, finish: shop.jars.get(jar)?.product.finish })),
    sandings,
    checks,
    clock: coats.length === 0 ? 'no-coats' : stateOf(outlook),
    moments: momentsOf(piece, worked, nowMs),
    jar: jar && { name: jar.name, finish: jar.product.finish },
    oldFinish: oldFinishFact(piece.id, shop),
    build: law && buildFact(piece, shop, law.totalDryM),
    windowEnd: until && {
      earliestMs: ms(until.earliestS),
      likelyMs: ms(until.likelyS),
      lateMs: ms(until.lateS),
    },
    coming: comingActs(piece, shop),
    overrides: shop.overrides.get(piece.id) ?? [],
  };
}

const stateOf = (outlook: Outlook | undefined): Facts['clock'] =>
  outlook?.state === 'ready' || outlook?.state === 'failed' ? outlook.state : 'computing';

function oldFinishFact(piece: string, shop: Shop): OldFinishFact {
  const record = oldFinishOf(piece, shop);
  const { tests, seen, lead } = record;
  const answers = [...tests, ...(seen ? [seen] : [])];
  return {
    finish: findingOf(record).finish,
    signs: seen?.signs ?? [],
    isSeen: seen !== undefined,
    knownMs: answers.length > 0 ? Math.max(...answers.map(({ atMs }) => atMs)) : undefined,
    sanding: sandingRule(record),
    lead: lead?.finding,
    leadMs: lead?.atMs,
  };
}

function buildFact({ coats }: Piece, shop: Shop, totalDryM: number): BuildFact | undefined {
  const newest = coats.findLast(({ how }) => how !== 'flash');
  const jar = newest && shop.jars.get(newest.jar);
  const limitM = jar && totalLimitM(jar.product.finish, sheetOf(jar.id, shop)?.totalFilm?.si);
  if (!newest || !jar || limitM === undefined) return undefined;
  return { totalDryM, limitM, nextDryM: dryOf(newest, shop) };
}

function dryOf(coat: Coat, shop: Shop): number {
  const jar = shop.jars.get(coat.jar);
  return jar ? dryFilmM(coat, jarFilmAt(jar, coat.atMs, shop)) : 0;
}

const ACT_OF: { readonly [T in Task]?: Act } = {
  scuff: 'scuff',
  'flash-coat': 'flash-coat',
  coat: 'coat',
  'toner-coat': 'coat',
  'opaque-coat': 'coat',
  seal: 'coat',
  'drop-fill': 'coat',
  pad: 'coat',
  'level-sand': 'level-sand',
  'rub-out': 'rub-out',
};

/** What is still to be done: as planned, else as every finish goes. Handing over comes last. */
function comingActs(piece: Piece, shop: Shop): readonly Act[] {
  const plan = shop.plans.get(piece.id);
  const planned = plan && planSteps(plan, piece, shop).filter(({ done }) => !done);
  const acts =
    planned?.flatMap((step) => (step.kind === 'work' ? (ACT_OF[step.task] ?? []) : [])) ?? usualActs(piece);
  return [...new Set<Act>([...acts, 'hand-over'])];
}

function usualActs(piece: Piece): readonly Act[] {
  if (isSanded(piece, 'rub-out')) return [];
  const rest: readonly Act[] = isSanded(piece, 'level') ? ['rub-out'] : ['level-sand', 'rub-out'];
  return piece.coats.length === 0 ? ['coat', ...rest] : rest;
}
