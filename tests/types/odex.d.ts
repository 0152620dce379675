/** The part of the package's interface that the bench uses; its own sources do not pass a strict check. */
export class Solver {
  constructor(dimension: number);
  absoluteTolerance: number;
  relativeTolerance: number;
  maxSteps: number;
  denseOutput: boolean;
  solve(
    derivative: (x: number, y: number[]) => number[],
    x0: number,
    y0: number[],
    xEnd: number,
  ): { y: number[]; nStep: number; nEval: number; outcome: number };
}
