import { options } from 'preact';

/**
 * What one tap changes is drawn once, when all of it has changed: a coat that is laid is on its piece, said and gone to in one go.
 * Called once, by the door.
 */
export function drawOnceATask(): void {
  const { port1, port2 } = new MessageChannel();
  const waiting: (() => void)[] = [];
  port1.onmessage = () => {
    for (const draw of waiting.splice(0)) draw();
  };
  options.debounceRendering = (draw) => {
    waiting.push(draw);
    port2.postMessage(undefined);
  };
}

/** Calls back when what has just changed is on the screen. */
export const afterDrawing = (job: () => void): void => {
  requestAnimationFrame(() => setTimeout(job));
};
