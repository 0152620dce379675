/** Who taps again so soon has not seen what the first tap did (common practice, no source), ms. */
const AGAIN_MS = 300;
/** A finger that comes down again comes down here, px. */
const SAME_PLACE_PX = 30;

type Control = Element | null;
interface Tap {
  readonly on: Control;
  readonly x: number;
  readonly y: number;
  readonly ms: number;
}

let last: Tap | undefined;
let on: Control = null;
let isAgain = false;

/**
 * A tap that falls twice is one tap: the second would send a form again, or fall on what the first has brought there. A step
 * or a choice may be tapped as fast as a finger can. Called once, by the door.
 */
export function tapOnce(): void {
  addEventListener('pointerdown', comeDown, true);
  addEventListener('click', tap, true);
  for (const other of ['keydown', 'beforeinput']) addEventListener(other, forget, true);
}

function comeDown(event: PointerEvent): void {
  on = (event.target as Partial<Element>).closest?.('a, button, input, label, select, summary') ?? null;
  isAgain =
    last !== undefined &&
    event.timeStamp - last.ms < AGAIN_MS &&
    Math.hypot(event.x - last.x, event.y - last.y) < SAME_PLACE_PX &&
    (on !== last.on || (on as Partial<HTMLButtonElement> | null)?.type === 'submit');
  if (isAgain) event.stopImmediatePropagation();
}

function tap(event: MouseEvent): void {
  if (!event.detail) return; // by a key
  last = { on, x: event.x, y: event.y, ms: event.timeStamp };
  if (!isAgain) return;
  event.stopImmediatePropagation();
  event.preventDefault();
}

/** What is typed between two taps lies between two acts. */
function forget(): void {
  last = undefined;
}
