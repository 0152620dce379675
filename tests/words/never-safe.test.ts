import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

/** The word as text says it of an act. A safety data sheet is a document and may be named. */
const SAYS_SAFE = /\b(un)?safe(ly|r|st)?\b/gi;

const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.(ts|tsx|html)$/.test(name))
  .map((name) => ({ name, text: readFileSync(join('src', name), 'utf8') }));

const saying = (text: string): string[] =>
  text.split('\n').filter((line) => !/^\s*(\*|\/\/|\/\*)/.test(line) && line.search(SAYS_SAFE) >= 0);

test('no text of the app says "safe" of an act', () => {
  expect(sources.flatMap(({ name, text }) => saying(text).map((line) => `${name}: ${line.trim()}`))).toEqual(
    [],
  );
});

test('looks at every text of the app, and notices the word', () => {
  const words = sources.filter(({ name }) => name.startsWith('words'));
  expect(words.length).toBeGreaterThan(15);
  expect(saying("  ready: 'It is safe to spray.',")).toHaveLength(1);
  expect(saying("  ready: 'Now safely dry',")).toHaveLength(1);
  expect(saying("  decides: 'Your safety data sheet decides.',")).toHaveLength(0);
});

test('no text judges a respirator', () => {
  const judging =
    /\b(respirator|mask|cartridge)s?\b[^.'`]*\b(is|are)\b[^.'`]*\b(adequate|enough|sufficient|suitable)\b/i;
  const said = sources
    .filter(({ name }) => name.startsWith('words'))
    .flatMap(({ text }) => text.split('\n').filter((line) => judging.test(line)));
  // The one line that names it leaves it to others.
  expect(said.every((line) => line.includes('for your programme and a licensed person to say'))).toBe(true);
});
