import { test } from 'vitest';
import { planBench } from '../../src/planner/plan-bench';
import type { Bench } from '../../src/planner/step';
import { largeBench, SHORT_RESTS } from '../planner/best/large-bench';
import { lowerBound, workingMinutes } from '../planner/best/lower-bound';

// Prints how long a plan takes and how far its end is from a bound that no plan can beat, and that perhaps none can reach. On 40 pieces that
// rest only days, seventeen days of work, both have a share: a linear programme that knows the coats a day and the order of the steps lies
// 0 and 1 % over the bound on two of the hardest of these benches; a solver that plans by whole days came to 3.3 and 5.9 % there in a minute,
// where the planner comes to 6.9 and 9.1.
function overBound(bench: Bench): number {
  const plan = planBench(bench);
  if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
  const end = Math.max(...plan.value.pieces.map(({ likely }) => likely));
  return workingMinutes(bench, end) / workingMinutes(bench, lowerBound(bench)) - 1;
}

const percent = (share: number): string => `${(share * 100).toFixed(1)} %`;

function report(name: string, bench: Bench): void {
  const steps = bench.pieces.reduce((sum, piece) => sum + piece.steps.length, 0);
  const timesMs = Array.from({ length: 9 }, () => {
    const from = performance.now();
    planBench(bench);
    return performance.now() - from;
  });
  const first = (timesMs[0] as number).toFixed(0);
  const median = (timesMs.sort((a, b) => a - b)[4] as number).toFixed(0);
  process.stdout.write(
    `${name}: ${bench.pieces.length} pieces, ${steps} steps, first ${first} ms, then ${median} ms, ${percent(overBound(bench))} over the bound\n`,
  );
}

test('planner', () => {
  for (const pieces of [40, 4, 10, 20, 40])
    for (const seed of [1, 2, 3]) report('trade rests', largeBench(seed, pieces));
  for (const seed of [1, 2, 3]) report('short rests', largeBench(seed, 40, SHORT_RESTS));
  const all = Array.from({ length: 24 }, (_, n) => overBound(largeBench(n + 1, 40, SHORT_RESTS)));
  const mean = all.reduce((sum, over) => sum + over, 0) / all.length;
  const most = Math.max(...all);
  process.stdout.write(
    `short rests, 24 benches: mean ${percent(mean)} over the bound, at most ${percent(most)}\n`,
  );
});
