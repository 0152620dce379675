import { readdirSync, readFileSync } from 'node:fs';
import { afterEach, expect, test, vi } from 'vitest';
import { fromHere, stillHere } from '../../src/parts/frame/route';

afterEach(() => vi.unstubAllGlobals());

/** An address bar of our own. */
function standAt(hash: string): { hash: string } {
  const bar = { hash };
  vi.stubGlobal('scrollY', 0);
  vi.stubGlobal('location', bar);
  return bar;
}

test.each([
  { why: 'who waited is taken on', meanwhile: '#/air/read', ends: '#/air' },
  { why: 'who went elsewhere stays there', meanwhile: '#/bench', ends: '#/bench' },
  { why: 'who went to a page behind it stays there', meanwhile: '#/air/readings', ends: '#/air/readings' },
])('$why', ({ meanwhile, ends }) => {
  const bar = standAt('#/air/read');
  const [goOn, isHere] = [fromHere(), stillHere()];
  bar.hash = meanwhile;
  expect(isHere()).toBe(meanwhile === '#/air/read');
  goOn('#/air');
  expect(bar.hash).toBe(ends);
});

test('no screen moves the reader past that question; only a code seen or typed leads on at once', () => {
  const screens = readdirSync('src/screens', { recursive: true, encoding: 'utf8' });
  const movesAtOnce = screens
    .filter((file) => /\.tsx?$/.test(file))
    .filter((file) => /\bgoTo\(|location\.hash = /.test(readFileSync(`src/screens/${file}`, 'utf8')));
  expect(screens.length).toBeGreaterThan(100);
  expect(movesAtOnce).toEqual(['mix/find/find-jar.tsx']);
});
