import { page } from '../app';

/** Counts what a finger does: every touch of the screen from here on. */
export async function countTaps(): Promise<() => Promise<number>> {
  await page.evaluate(() => {
    const seen = { taps: 0 };
    Object.assign(globalThis, { seen });
    addEventListener('pointerdown', () => seen.taps++, true);
  });
  return () => page.evaluate(() => (globalThis as unknown as { seen: { taps: number } }).seen.taps);
}
