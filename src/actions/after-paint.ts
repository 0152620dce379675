/** A hidden page is not drawn; then it is as good as drawn after this, ms. A slow phone takes a while over a page. */
const DRAWN_MS = 1_000;

/** Calls back once the screen has been drawn. */
export function afterPaint(job: () => void, limitMs = DRAWN_MS): void {
  const limit = setTimeout(() => {
    cancelAnimationFrame(frame); // or it would be done again when the page is seen
    job();
  }, limitMs);
  const frame = requestAnimationFrame(() => {
    clearTimeout(limit);
    setTimeout(job);
  });
}
