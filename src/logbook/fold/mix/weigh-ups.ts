import type { EntryInSi, Lines } from '../in-si';

/** What went into the vessel in one pour. */
export interface Pour {
  readonly entry: string;
  readonly line: number;
  readonly massKg: number;
  readonly atMs: number;
}

/** A weigh-up, with every pour in time order. */
export interface WeighUp extends Pick<EntryInSi<'weigh-up-begun'>, 'recipe' | 'plan' | 'isTared'> {
  readonly id: string;
  readonly divisionKg: number;
  readonly begunMs: number;
  readonly pours: readonly Pour[];
  /** What the scale shows now when it is not tared in between. */
  readonly totalKg: number;
  /** The jar that it became. */
  readonly jar: string | undefined;
  readonly droppedMs: number | undefined;
}
type Growing = { -readonly [Key in keyof WeighUp]: Key extends 'pours' ? Pour[] : WeighUp[Key] };

/** The weigh-ups by id. */
export function foldWeighUps(lines: Lines) {
  const weighUps = new Map<string, Growing>();
  for (const line of lines.of('weigh-up-begun'))
    if (!weighUps.has(line.weighUp)) weighUps.set(line.weighUp, begin(line));
  for (const line of lines.of('poured')) pour(weighUps.get(line.weighUp), line);
  for (const { weighUp, atMs } of lines.of('weigh-up-dropped'))
    Object.assign(weighUps.get(weighUp) ?? {}, { droppedMs: atMs });
  for (const { weighUp, jar } of lines.of('jar-filled'))
    if (weighUp !== undefined) Object.assign(weighUps.get(weighUp) ?? {}, { jar });
  return { weighUps: weighUps as ReadonlyMap<string, WeighUp> };
}

const begin = (line: EntryInSi<'weigh-up-begun'>): Growing => ({
  id: line.weighUp,
  recipe: line.recipe,
  plan: line.plan,
  isTared: line.isTared,
  divisionKg: line.division.si,
  begunMs: line.atMs,
  pours: [],
  totalKg: 0,
  jar: undefined,
  droppedMs: undefined,
});

function pour(weighUp: Growing | undefined, { id, line, scale, atMs }: EntryInSi<'poured'>): void {
  if (!weighUp) return;
  const massKg = weighUp.isTared ? scale.si : Math.max(0, scale.si - weighUp.totalKg);
  weighUp.pours.push({ entry: id, line, massKg, atMs });
  weighUp.totalKg += massKg;
}

/** What was poured of each line of the plan, kg; undefined for a line that is still to come. */
export function pouredKg({ plan, pours }: Pick<WeighUp, 'plan' | 'pours'>): (number | undefined)[] {
  const sums: (number | undefined)[] = plan.map(() => undefined);
  for (const { line, massKg } of pours) if (line < sums.length) sums[line] = (sums[line] ?? 0) + massKg;
  return sums;
}
