import { options } from 'preact';
import { afterPaint } from '../../actions/after-paint';

type Job = () => void;

const { port1, port2 } = new MessageChannel();
const anew: Job[] = [];
const draws: Job[] = [];
/** Whether something is being said that is not on the screen yet. */
let isSaying = false;
/** How many things the drawing waits for. */
let holds = 0;
let isDrawing = false;
/** A page that is hidden has no frames, ms. */
const NO_FRAME_MS = 100;
/** What is done so soon after a tap is done at once for who tapped (Miller 1968, from memory: 0.1 s), ms. */
const AT_ONCE_MS = 100;
/** No finger that taps lies on a button for longer, ms. */
const PRESSED_MS = 500;

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
  if (holds === 0) drawAll();
}

function drawAll(): void {
  if (isDrawing) return; // a field that is taken off the screen tells that it was left
  isDrawing = true;
  try {
    run(anew);
    run(draws);
  } finally {
    isDrawing = false;
  }
}

/** What is put into a field is drawn at once: the next field acts on what it was drawn with. A choice is told by its change alone. */
function drawPutIn({ type, target }: Event): void {
  if (type === 'change' || !/radio|checkbox|select/.test((target as HTMLInputElement).type)) drawAll();
}

/**
 * What one tap changes is drawn once, when all of it has changed: a coat that is laid is on its piece and gone to in one go.
 * Called once, by the door.
 */
export function drawOnceATask(): void {
  port1.onmessage = draw;
  options.debounceRendering = into(draws);
  addEventListener('pointerdown', draw, true); // what a tap has changed is drawn before the next
  addEventListener('pointerdown', holdWhilePressed);
  for (const put of ['input', 'change']) addEventListener(put, drawPutIn);
}

/** From the finger on a button that sends a form until the form is sent, all else that is worked out and drawn waits. */
function holdWhilePressed({ target }: Event): void {
  if (!(target as Partial<Element>).closest?.('[type=submit]')) return;
  const letGo = holdDrawing(PRESSED_MS);
  addEventListener('click', letGo, { once: true }); // sent right after this, and held by the form before anything is drawn
}

/** Calls back before the screen is drawn next: what follows from a change is worked out once, and never drawn as it was before. */
export const beforeDrawing = into(anew);

/** Nothing is drawn until that is called, but for longer than a moment: what a form does is drawn with what came of it. */
export function holdDrawing(limitMs = AT_ONCE_MS): () => void {
  holds++;
  const limit = setTimeout(release, limitMs);
  let isOver = false;
  function release(): void {
    clearTimeout(limit);
    if (!isOver) holds--;
    isOver = true;
    port2.postMessage(0);
  }
  return release;
}

/** What is said now is on the screen first; all else that changed with it is drawn in the next frame. For a form that is left by it. */
export function sayFirst(then: Job): void {
  if (isSaying || document.hidden) {
    then();
    return;
  }
  isSaying = true;
  const drawAgain = holdDrawing(2 * NO_FRAME_MS); // what follows ends it sooner, frame or none
  afterPaint(() => {
    isSaying = false;
    then(); // where it leads to a page, noting how far down the one left was read lays that out: 30 ms on a slow phone
    drawAgain();
  }, NO_FRAME_MS);
}

/** Calls back when what has just changed is drawn. */
export { afterPaint as afterDrawing };
