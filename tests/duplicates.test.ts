import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

/** So many lines alike, one after another, are one thing written twice. Fewer are the way a form or a list looks. */
const ALIKE = 7;
/** Says nothing of what is done: an import, a comment, a blank line, lone brackets. */
const IMPORTS = /^import [^;]*;$/gm;
const SAYS_NOTHING = /^(\/\/.*|\/?\*.*|\W*)$/;

const linesOf = (file: string) =>
  readFileSync(file, 'utf8')
    .replace(IMPORTS, (lines) => lines.replace(/.+/g, ''))
    .split('\n')
    .map((line, index) => ({ text: line.trim(), place: `${file}:${index + 1}` }))
    .filter(({ text }) => !SAYS_NOTHING.test(text));

const files = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.(tsx?|css)$/.test(name))
  .map((name) => join('src', name));

test(`no ${ALIKE} lines stand in two places`, () => {
  const first = new Map<string, string>();
  const again: string[] = [];
  for (const lines of files.map(linesOf))
    for (let at = 0; at + ALIKE <= lines.length; at++) {
      const run = lines
        .slice(at, at + ALIKE)
        .map(({ text }) => text)
        .join('\n');
      const place = lines[at]?.place ?? '';
      const before = first.get(run);
      if (before) again.push(`${place} is ${before}`);
      else first.set(run, place);
    }
  expect(again).toEqual([]);
});
