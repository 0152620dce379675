import { expect, test } from 'vitest';
import { openApp, page } from '../app';
import { coatLogged } from '../on-screen';

// The main job from the keyboard alone: start a piece, fill a jar, lay a coat, undo it.
const MOST_TABS = 120;

/** What the focus is on, as a reader would say it, and whether it can be seen there. */
const focused = (): Promise<{ name: string; isSeen: boolean }> =>
  page.evaluate(() => {
    const element = document.activeElement as HTMLElement & { labels?: NodeListOf<HTMLElement> };
    const name =
      element.getAttribute('aria-label') ?? element.labels?.[0]?.textContent ?? element.textContent ?? '';
    const marked = element.matches(':focus-visible')
      ? [element, element.closest('label'), element.nextElementSibling]
      : [];
    const isSeen = marked.some((one) => {
      if (!one) return false;
      const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(one);
      return (outlineStyle !== 'none' && outlineWidth !== '0px') || boxShadow !== 'none';
    });
    return { name: name.trim(), isSeen };
  });

async function tabTo(name: RegExp): Promise<void> {
  for (let tabs = 0; tabs < MOST_TABS; tabs++) {
    await page.keyboard.press('Tab');
    const now = await focused();
    if (!name.test(now.name)) continue;
    expect(now.isSeen, `the focus on ${now.name} cannot be seen`).toBe(true);
    return;
  }
  throw new Error(`Tab never came to ${name}`);
}
async function press(name: RegExp): Promise<void> {
  await tabTo(name);
  await page.keyboard.press('Enter');
}
async function write(name: RegExp, text: string): Promise<void> {
  await tabTo(name);
  await page.keyboard.type(text);
}

test('a piece, a jar and a coat, and its undo, without a pointer', async () => {
  await openApp({ viewport: { width: 1100, height: 800 } });
  await press(/^Start (your first|a) piece/);
  await page.getByRole('heading', { level: 1, name: 'Start a piece' }).waitFor();
  await write(/^Name/, 'Small box');
  await press(/^Start this piece/);
  await page.getByRole('heading', { name: 'Small box' }).first().waitFor();

  await press(/^Mix$/);
  await page.getByRole('heading', { level: 1, name: 'Mix' }).waitFor();
  await press(/^(Say what is in a jar|Fill a jar|New jar)/);
  await write(/^Name of the jar/, 'Gloss');
  await press(/^Fill the jar/);
  await page.getByRole('heading', { name: 'Gloss' }).first().waitFor();

  await press(/^Log a coat/);
  await press(/^Read and done/);
  await page.getByRole('button', { name: 'Log it' }).first().waitFor();
  await press(/^Log it/);
  await coatLogged('Coat 1 logged on Small box.'); // the page that comes takes the focus
  await press(/^Undo/);
  await page.getByText('Undone: Coat 1.').waitFor();
});
