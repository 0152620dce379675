import { lawOf } from '../../estimator/finishes/law-history';
import { totalLimitM } from '../../estimator/finishes/total-film';
import type { Shop } from '../../logbook/fold/fold';
import type { Jar } from '../../logbook/fold/mix/jars';
import type { Coat, Piece } from '../../logbook/fold/piece/pieces';
import type { Task } from '../../planner/step';
import { airAsRead, airLog, READING_HOLDS_MS } from '../../shop/air/air-between';
import { jarBlush } from '../../shop/air/jar-blush';
import { measuredAir } from '../../shop/air/measured-air';
import { jarFilmAt } from '../../shop/jar/film-at';
import { jarHazards } from '../../shop/jar/hazards';
import { jarInHand } from '../../shop/jar/in-hand';
import { glassPlate, jarLife, mixedMs } from '../../shop/jar/life';
import { planSteps } from '../../shop/plan/plan-steps';
import { groundsOn } from '../../shop/stack/grounds';
import { asItStands, layersLeft } from '../../shop/stack/layers-left';
import { findingOf, oldFinishOf, sandingRule } from '../../shop/stack/old-finish';
import { sandingRoom } from '../../shop/stack/sanding-room';
import { sheetOf } from '../../shop/stack/sheet-times';
import { dryFilmM } from '../../shop/stack/stack-events';
import { DAY_MS } from '../../units';
import type { Act, Question } from '../../verdicts/act';
import type { AboveFact, AirFact, BuildFact, Facts, JarFact, OldFinishFact } from '../../verdicts/facts';
import { bandMs, isSanded, type Moment, momentsOf } from '../../verdicts/moments';
import { isFoundSoft } from '../../verdicts/rules/film';
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
  const until = law?.recoatUntil;
  const { startedMs, closedMs, base, coats, sandings, checks } = asItStands(piece, shop);
  // Before the first coat the page of a coat judges by the jar in hand, and so do all others.
  const chosen = jarId ?? coats.at(-1)?.jar;
  const jar = chosen === undefined ? jarInHand(piece, shop) : shop.jars.get(chosen);
  return {
    nowMs,
    startedMs,
    closedMs,
    base,
    coats: coats.map(({ atMs, how, jar }) => ({ atMs, how, finish: shop.jars.get(jar)?.product.finish })),
    sandings,
    checks,
    clock: coats.length === 0 ? 'no-coats' : stateOf(outlook),
    moments:
      coats.length === 0
        ? []
        : momentsOf(piece, worked, nowMs).map(orFoundSoft(isFoundSoft({ checks, coats }))),
    jar: jar && jarFact(jar, shop),
    air: airFact(jar, shop, nowMs),
    sandingK: sandingRoom(shop).temperatureK,
    above: aboveFact(piece, shop),
    promisedMs: shop.promises.get(piece.id),
    oldFinish: oldFinishFact(piece.id, shop),
    build: law && buildFact(piece, shop, law.totalDryM),
    windowEnd: worked && until && bandMs(worked.startMs, until),
    coming: comingActs(piece, shop),
    overrides: shop.overrides.get(piece.id) ?? [],
    grounds: groundsOn(piece, shop),
  };
}

/** No film is called hard against what a check has found. */
const orFoundSoft =
  (isSoft: boolean) =>
  (moment: Moment): Moment =>
    isSoft && moment.name === 'settled' ? { ...moment, isFoundSoft: true } : moment;

function jarFact(jar: Jar, shop: Shop): JarFact {
  const life = jarLife(jar, shop);
  const plate = glassPlate(jar);
  return {
    name: jar.name,
    finish: jar.product.finish,
    hazards: jarHazards(jar, shop),
    mixedMs: mixedMs(jar),
    ...(life && { lifeEndMs: life.endMs, lifeAs: life.as }),
    ...(plate?.result === 'passes' && { dryOnGlassMs: plate.atMs }),
  };
}

/** Cold of longer ago has left the wood (judgement, no source). */
const COLD_LASTS_MS = 3 * DAY_MS;

function airFact(jar: Jar | undefined, shop: Shop, nowMs: number): AirFact {
  const last = shop.airReadings.findLast(({ atMs }) => atMs <= nowMs);
  const isFresh = last !== undefined && nowMs - last.atMs < READING_HOLDS_MS;
  const measured = isFresh ? measuredAir(last, shop) : undefined;
  return {
    ...(measured &&
      last && {
        now: { atMs: last.atMs, temperatureK: last.temperature.si, humidity: measured.humidity },
        blush: jar && jarBlush(jar, measured)?.outlook,
      }),
    ...((last || shop.forecast) && { coldestK: coldestK(shop, nowMs) }),
    ...(shop.forecast && { nightK: shop.forecast.nightTemperature.si }),
  };
}

/** The coldest that the shop was lately: as read, for as long as that held, and as the forecast has it between. */
function coldestK({ airReadings, forecast }: Shop, nowMs: number): number {
  const fromMs = nowMs - COLD_LASTS_MS;
  const told = airLog(airAsRead(airReadings, fromMs), forecast, fromMs, nowMs + 1);
  return Math.min(...told.map(({ temperatureK }) => temperatureK));
}

function aboveFact(piece: Piece, shop: Shop): AboveFact | undefined {
  const layers = layersLeft(piece, shop);
  const top = layers.findLastIndex(({ leftM }) => leftM > 0);
  const lowest = layers.findLastIndex(({ isColour, leftM }) => isColour && leftM > 0);
  const colour = lowest === top ? -1 : lowest; // where colour lies on top, sanding meets colour first: it must not go through it
  const filmM = layers.slice(colour + 1).reduce((sum, { leftM }) => sum + leftM, 0);
  if (colour === -1 && filmM === 0) return undefined;
  const isOld = piece.base === 'old-closed' || piece.base === 'old-redissolves';
  return { what: colour >= 0 ? 'colour' : isOld ? 'old-finish' : 'wood', filmM };
}

const stateOf = (outlook: Outlook | undefined): Facts['clock'] =>
  outlook?.state === 'ready' || outlook?.state === 'failed' ? outlook.state : 'computing';

function oldFinishFact(piece: string, shop: Shop): OldFinishFact {
  const record = oldFinishOf(piece, shop);
  const { tests, seen, lead } = record;
  const answers = [...tests, ...(seen ? [seen] : [])];
  return {
    finish: tests.length + (seen ? 1 : 0) === 0 ? 'unknown' : findingOf(record).finish,
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

/** The act that a task of a plan is. */
export const actOf = (task: Task): Act | undefined => ACT_OF[task];

/** What is still to be done: as planned, else as every finish goes. Handing over comes last. */
function comingActs(piece: Piece, shop: Shop): readonly Act[] {
  const plan = shop.plans.get(piece.id);
  const planned = plan && planSteps(plan, piece, shop).filter(({ done }) => !done);
  const acts =
    planned?.flatMap((step) => (step.kind === 'work' ? (actOf(step.task) ?? []) : [])) ?? usualActs(piece);
  return [...new Set<Act>([...acts, 'hand-over'])];
}

function usualActs(piece: Piece): readonly Act[] {
  if (isSanded(piece, 'rub-out')) return [];
  const rest: readonly Act[] = isSanded(piece, 'level') ? ['rub-out'] : ['level-sand', 'rub-out'];
  return piece.coats.length === 0 ? ['coat', ...rest] : rest;
}
