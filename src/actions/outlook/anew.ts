import { effect, untracked } from '@preact/signals';

export interface AnewNeeds {
  /** Reads what the job goes by. */
  readonly goBy: () => void;
  readonly job: () => void;
  /** Calls back before the screen is drawn next. */
  readonly beforeDrawing: (job: () => void) => void;
}

/** Does a job anew when what it goes by changes: once before a drawing, however often it has changed by then. Gives the function that ends it. */
export function anew({ goBy, job, beforeDrawing }: AnewNeeds): () => void {
  let isWaiting = false;
  let isOver = false;
  const stop = effect(() => {
    goBy();
    if (isWaiting) return;
    isWaiting = true;
    beforeDrawing(() => {
      isWaiting = false;
      if (!isOver) untracked(job);
    });
  });
  return () => {
    isOver = true;
    stop();
  };
}
