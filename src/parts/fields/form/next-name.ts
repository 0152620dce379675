/** The name of another thing like one: "Chair" is followed by "Chair 2", past every number that is taken. */
export function nextName(name: string, taken: readonly string[]): string {
  const [, bare = name, number = '1'] = /^(.*?)(?: (\d{1,2}))?$/.exec(name) ?? [];
  let next = Number(number) + 1;
  while (taken.includes(`${bare} ${next}`)) next += 1;
  return `${bare} ${next}`;
}

/** A name that nothing has yet: itself, or the next one. */
export const freeName = (name: string, taken: readonly string[]): string =>
  taken.includes(name) ? nextName(name, taken) : name;
