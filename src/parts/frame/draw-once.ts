import { options } from 'preact';
import { afterPaint } from '../../actions/after-paint';

type Job = () => void;

const { port1, port2 } = new MessageChannel();
const anew: Job[] = [];
const draws: Job[] = [];
/** What comes after what is being said; undefined while nothing is. */
let afterwards: Job[] | undefined;

/** Takes a job into the next drawing. */
const into = (jobs: Job[]) => (job: Job) => {
  jobs.push(job);
  port2.postMessage(0);
};

/** Runs what is there and what comes of it. */
function run(jobs: Job[]): void {
  for (let job = jobs.shift(); job; job = jobs.shift()) job();
}

function draw(): void {
  if (afterwards) return;
  run(anew);
  run(draws);
}

/**
 * What one tap changes is drawn once, when all of it has changed: a coat that is laid is on its piece and gone to in one go.
 * Called once, by the door.
 */
export function drawOnceATask(): void {
  port1.onmessage = draw;
  options.debounceRendering = into(draws);
}

/** Calls back before the screen is drawn next: what follows from a change is worked out once, and never drawn as it was before. */
export const beforeDrawing = into(anew);

/** What was just said is on the screen first; all else that changed with it is drawn in the next frame. */
export function sayFirst(): void {
  if (afterwards) return;
  const jobs: Job[] = [];
  afterwards = jobs;
  afterPaint(() => {
    afterwards = undefined;
    run(jobs);
    draw();
  });
}

/** Once what was just said is on the screen; at once where nothing was. */
export function afterSaying(job: Job): void {
  if (afterwards) afterwards.push(job);
  else job();
}

/** Calls back when what has just changed is drawn. */
export { afterPaint as afterDrawing };
