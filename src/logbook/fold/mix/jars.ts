import type { EntryInSi, Lines } from '../in-si';

type Content = Omit<EntryInSi<'jar-filled'>, 'id' | 'v' | 'kind' | 'at' | 'atMs' | 'zone' | 'jar'>;
type Growing<T> = { -readonly [Key in keyof T]: T[Key] extends readonly (infer Item)[] ? Item[] : T[Key] };

/** So much taken out of a jar other than by a coat; `into` names the jar it was poured into. */
export interface Drawing {
  readonly atMs: number;
  readonly volumeM3: number;
  readonly into?: string;
}
export type Weighing = EntryInSi<'jar-weighed'>;
export type JarTest = EntryInSi<'jar-tested'>;

/** What is, or was, in a jar. */
export interface Jar extends Content {
  readonly id: string;
  /** The entry that filled it. */
  readonly entry: string;
  readonly filledMs: number;
  readonly emptiedMs: number | undefined;
  readonly drawings: readonly Drawing[];
  readonly weighings: readonly Weighing[];
  /** In the order made. */
  readonly tests: readonly JarTest[];
}

/** The jars by id. */
export function foldJars(lines: Lines) {
  const jars = new Map<string, Growing<Jar>>();
  for (const line of lines.of('jar-filled')) if (!jars.has(line.jar)) jars.set(line.jar, fill(line));
  for (const { jar: into, atMs, boxedFrom = [] } of lines.of('jar-filled'))
    for (const { jar, volume } of boxedFrom)
      jars.get(jar)?.drawings.push({ atMs, volumeM3: volume.si, into });
  for (const { jar, atMs, volume } of lines.of('jar-drawn'))
    jars.get(jar)?.drawings.push({ atMs, volumeM3: volume.si });
  for (const line of lines.of('jar-weighed')) jars.get(line.jar)?.weighings.push(line);
  for (const line of lines.of('jar-tested')) jars.get(line.jar)?.tests.push(line);
  for (const { jar, atMs } of lines.of('jar-emptied'))
    Object.assign(jars.get(jar) ?? {}, { emptiedMs: atMs });
  return { jars: jars as ReadonlyMap<string, Jar> };
}

function fill({
  jar,
  atMs,
  id: entry,
  v: _v,
  kind: _kind,
  at: _at,
  zone: _zone,
  ...content
}: EntryInSi<'jar-filled'>): Growing<Jar> {
  const fresh: Jar = {
    ...content,
    id: jar,
    entry,
    filledMs: atMs,
    emptiedMs: undefined,
    drawings: [],
    weighings: [],
    tests: [],
  };
  return fresh as Growing<Jar>;
}
