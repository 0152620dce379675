import type { Match } from '../../logbook/fold/piece/matches';
import { KEPT, type LearnedStrength, learnedStrength } from '../../science/pigment/learned-strength';
import { MONTH_S } from '../../units';
import { believe, strangerIn } from './believe';
import { matchJar } from './jar-content';
import { type KnownTinter, modelOf } from './model';

/** When a tinter was opened anew from another lot, by ingredient. */
export type LotChanges = Readonly<Record<string, readonly number[]>>;

/** A trial of another match that taught something of a tinter. */
export interface EarlierTrial {
  readonly match: string;
  readonly trial: string;
}

/** What the matches so far have taught of one tinter. */
interface Lesson {
  readonly learned: LearnedStrength;
  /** What the strength is against: a lesson says nothing of the same tinter taken for something else. */
  readonly takenFor: string;
  readonly base: string;
  readonly atMs: number;
  readonly trials: readonly EarlierTrial[];
}
type Lessons = ReadonlyMap<string, Lesson>;

/** A lesson as it counts for a match. */
export interface CountedLesson {
  readonly learned: LearnedStrength;
  readonly kept: number;
  readonly trials: readonly EarlierTrial[];
}

const YEAR_MS = 12 * MONTH_S * 1000;

/** What matches begun earlier taught of the tinters of a match, in the order of its model. */
export function lessonsFor(
  match: Match,
  tinters: readonly KnownTinter[],
  all: readonly Match[],
  lots: LotChanges,
): (CountedLesson | undefined)[] {
  const earlier = all
    .filter(({ begunMs }) => begunMs < match.begunMs)
    .sort((one, other) => one.begunMs - other.begunMs);
  const lessons = earlier.reduce<Lessons>((known, one) => withTaught(known, one, all, lots), new Map());
  return counted(match, tinters, lessons, lots);
}

/** The lessons that a match starts with, each as far as it still counts. */
function counted(match: Match, tinters: readonly KnownTinter[], lessons: Lessons, lots: LotChanges) {
  return tinters.map((tinter): CountedLesson | undefined => {
    const lesson = lessons.get(tinter.ingredient);
    if (lesson?.takenFor !== takenFor(tinter, match)) return undefined;
    const kept = keptOf(lesson, match, lots[tinter.ingredient] ?? []);
    return { learned: lesson.learned, kept, trials: lesson.trials };
  });
}

function keptOf({ atMs, base }: Lesson, match: Match, lotChangesMs: readonly number[]): number {
  const years = Math.max(match.begunMs - atMs, 0) / YEAR_MS;
  const otherLots = lotChangesMs.filter((changeMs) => changeMs > atMs && changeMs <= match.begunMs).length;
  const sameBase = base === match.base ? 1 : KEPT.otherBase;
  return KEPT.match * KEPT.year ** years * KEPT.otherLot ** otherLots * sameBase;
}

const takenFor = ({ ingredient, from }: KnownTinter, { base, white, tinters }: Match): string =>
  from === 'usual' ? (tinters.find((one) => one.ingredient === ingredient)?.like ?? '') : `${base} ${white}`;

/** The lessons once a match has been gone through, too. */
function withTaught(lessons: Lessons, match: Match, all: readonly Match[], lots: LotChanges): Lessons {
  const known = modelOf(match, all);
  if (!known || strangerIn(match, known.tinters) !== undefined) return lessons;
  const before = counted(match, known.tinters, lessons, lots);
  const { belief, trials } = believe(match, known, before);
  const after = new Map(lessons);
  known.tinters.forEach((tinter, place) => {
    const taught = trials.filter(({ number }) => matchJar(match, number).tinterGrams.has(tinter.ingredient));
    const last = taught.at(-1);
    if (!last) return;
    after.set(tinter.ingredient, {
      learned: learnedStrength(belief, place),
      takenFor: takenFor(tinter, match),
      base: match.base,
      atMs: last.mixedMs,
      trials: [...(before[place]?.trials ?? []), ...taught.map(({ id }) => ({ match: match.id, trial: id }))],
    });
  });
  return after;
}
