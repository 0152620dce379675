import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join(folder, name));
const texts = new Map(
  [...filesIn('src'), ...filesIn('tests')].map((file) => [file, readFileSync(file, 'utf8')]),
);
const EXPORT = /^export (?:async )?(?:const|function|class) (\w+)/gm;

// Types are left out: those of a signature are exported with it.
test('every value that is exported is used by another file', () => {
  const words = new Map<string, Set<string>>();
  for (const [file, text] of texts)
    for (const [word] of text.matchAll(/\w+/g)) {
      const files = words.get(word) ?? new Set();
      words.set(word, files.add(file));
    }
  const unused = [...texts]
    .filter(([file]) => file.startsWith('src'))
    .flatMap(([file, text]) =>
      [...text.matchAll(EXPORT)].flatMap(([, name = '']) =>
        (words.get(name)?.size ?? 0) > 1 ? [] : `${file}: ${name}`,
      ),
    );
  expect(unused).toEqual([]);
});
