import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';

const COMMENT = /\/\*\*[\s\S]*?\*\/|^\s*\/\/.*$/gm;
const texts = new Map(
  readdirSync('src', { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join('src', name))
    .map((file) => [file, readFileSync(file, 'utf8').replace(COMMENT, '')]),
);
const EXPORT = /^export (?:async )?(?:const|function\*?|class) (\w+)/gm;
const NAMED = /(?:\bfrom|\bimport|\bimport\(|\bURL\()\s*'(\.[^']+)'/g;

const found = (path: string): string =>
  ['', '.ts', '.tsx', '/index.ts', '/index.tsx'].map((end) => path + end).find((file) => texts.has(file)) ??
  path;

const runsHere = (text: string, name: string): boolean =>
  (text.match(new RegExp(`\\b${name}\\b`, 'g'))?.length ?? 0) > 1;

// Starts a hub from the same sources (`npm run hub`): a program, no test.
const HUB = readFileSync('tests/hub/run.mjs', 'utf8');

/** The words of each file that names a file in an import, by the file named. */
function readersOf(): Map<string, Set<string>[]> {
  const readers = new Map<string, Set<string>[]>();
  for (const [file, text] of texts) {
    const words = new Set(text.match(/\w+/g));
    for (const [, path = ''] of text.matchAll(NAMED)) {
      const named = found(join(dirname(file), path));
      readers.set(named, [...(readers.get(named) ?? []), words]);
    }
  }
  return readers;
}

// Types are left out: those of a signature are exported with it. A test is no user: what it alone runs is not the app.
test('every value that is exported is run by the app', () => {
  const readers = readersOf();
  const unused = [...texts].flatMap(([file, text]) =>
    [...text.matchAll(EXPORT)].flatMap(([, name = '']) =>
      runsHere(text, name) || HUB.includes(`.${name}(`) || readers.get(file)?.some((words) => words.has(name))
        ? []
        : `${file}: ${name}`,
    ),
  );
  expect(unused).toEqual([]);
});
