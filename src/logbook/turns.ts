/** Runs jobs one after another, in the order they come; one that fails does not hold up the next. */
export function createTurns() {
  let last: Promise<unknown> = Promise.resolve();
  return <Value>(job: () => Promise<Value>): Promise<Value> => {
    const done = last.then(job);
    last = done.catch(() => undefined);
    return done;
  };
}
