/** Who taps again so soon has not seen what the first tap did (common practice, no source), ms. */
const AGAIN_MS = 300;
/** A finger that comes down again comes down here, px. */
const SAME_PLACE_PX = 30;

let last: MouseEvent | undefined;
let lastMs = 0;
let isAgain = false;

/** A tap that falls twice is one tap: the second would log it again, or fall on what the first has brought there. Called once, by the door. */
export function tapOnce(): void {
  for (const type of ['pointerdown', 'click'] as const) addEventListener(type, hear, true);
}

function hear(event: MouseEvent): void {
  if (event.type !== 'click')
    isAgain =
      last !== undefined &&
      event.timeStamp - lastMs < AGAIN_MS &&
      Math.hypot(event.x - last.x, event.y - last.y) < SAME_PLACE_PX;
  else if (event.detail) {
    last = event;
    lastMs = event.timeStamp; // now: a clock moved by hand stamps an event when it is asked
  } else return; // by a key
  if (!isAgain) return;
  event.stopImmediatePropagation();
  if (last === event) event.preventDefault(); // not of the finger that comes down: two clicks choose a word
}
