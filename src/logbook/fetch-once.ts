/** Fetches code when it is first needed, and once: asking again costs nothing, and what could not be had is asked for again. */
export function fetchOnce<Code>(fetch: () => Promise<Code>): () => Promise<Code> {
  let fetched: Promise<Code> | undefined;
  return () => {
    if (!fetched) {
      fetched = fetch();
      fetched.catch(() => {
        fetched = undefined;
      });
    }
    return fetched;
  };
}
