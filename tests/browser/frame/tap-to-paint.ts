import type { Page } from 'playwright-core';

interface Tapped {
  readonly upMs: number;
  paintedMs?: number;
}
type Seen = { tapped?: Tapped };

/**
 * Notes, in the page itself, when the finger left the button that logs a coat, and when the first frame was painted that says that it is
 * logged: the browser's own times of the event and of the text (Element Timing).
 */
export const watchTap = (): void => {
  const seen = globalThis as unknown as Seen;
  const PAINTED = 'coat-logged';
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as (PerformanceEntry & {
      identifier: string;
      renderTime: number;
    })[])
      if (seen.tapped && entry.identifier === PAINTED) seen.tapped.paintedMs ??= entry.renderTime;
  }).observe({ type: 'element' });
  const markToast = (_: unknown, observer: MutationObserver): void => {
    const text = document.querySelector('.toast span');
    if (!text) return;
    observer.disconnect();
    text.setAttribute('elementtiming', PAINTED);
  };
  addEventListener(
    'pointerup',
    ({ target, timeStamp }) => {
      if (!(target as Element).closest('button')?.textContent?.startsWith('Log it')) return;
      seen.tapped = { upMs: timeStamp };
      new MutationObserver(markToast).observe(document, { childList: true, subtree: true });
    },
    true,
  );
};

/** How long a finger that taps lies on the glass, ms: of no consequence to the page but that it is not lifted before the touch was told. */
const PRESSED_MS = 80;

/** Taps the button that logs the coat; from the lifting of the finger to the painted frame that says so, ms. */
export async function tapToPaint(page: Page): Promise<number> {
  const button = page.getByRole('button', { name: 'Log it' }).first();
  await button.scrollIntoViewIfNeeded();
  const { x = 0, y = 0, width = 0, height = 0 } = { ...(await button.boundingBox()) };
  const devtools = await page.context().newCDPSession(page);
  const touchPoints = [{ x: x + width / 2, y: y + height / 2 }];
  await devtools.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints });
  await page.waitForTimeout(PRESSED_MS);
  await devtools.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await devtools.detach();
  const painted = await page.waitForFunction(() => {
    const { tapped } = globalThis as unknown as Seen;
    return tapped?.paintedMs === undefined ? undefined : tapped.paintedMs - tapped.upMs;
  });
  return painted.jsonValue() as Promise<number>;
}
