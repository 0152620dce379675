import type { Lines, Told } from './told';

type Content = Pick<
  Told<'jar-filled'>,
  'name' | 'product' | 'thinner' | 'thinning' | 'retarder' | 'pigment' | 'note'
>;

/** What is, or was, in a jar. */
export interface Jar extends Content {
  readonly id: string;
  readonly filledMs: number;
  readonly emptiedMs: number | undefined;
}

/** The jars by id. */
export function foldJars(lines: Lines) {
  const jars = new Map<string, Jar>();
  for (const line of lines.of('jar-filled')) if (!jars.has(line.jar)) jars.set(line.jar, fill(line));
  for (const { jar, atMs } of lines.of('jar-emptied')) {
    const full = jars.get(jar);
    if (full) jars.set(jar, { ...full, emptiedMs: atMs });
  }
  return { jars: jars as ReadonlyMap<string, Jar> };
}

function fill({
  jar,
  atMs,
  id: _id,
  v: _v,
  kind: _kind,
  at: _at,
  zone: _zone,
  ...content
}: Told<'jar-filled'>): Jar {
  return { ...content, id: jar, filledMs: atMs, emptiedMs: undefined };
}
