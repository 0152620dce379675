/** The engine compiles what is called often while it runs: before that a figure says more of the engine than of the work. */
const WARM_MS = 500;

/** Processor time of a piece of work on this thread and its helpers, ms: the middle of several runs, after warming up. */
export function processorMs(work: () => void, runs = 9): number {
  const warm = performance.now() + WARM_MS;
  for (let k = 0; k < 4 || performance.now() < warm; k++) work();
  const times = Array.from({ length: runs }, () => {
    const before = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  });
  return times.sort((a, b) => a - b)[(runs - 1) >> 1] as number;
}

/** One line of figures on the terminal. */
export const say = (line: string): void => void process.stdout.write(`${line}\n`);
