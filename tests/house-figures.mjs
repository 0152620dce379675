// Prints the size and the shape of the source, now or as of a commit: `node tests/house-figures.mjs [commit]`.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative, resolve } from 'node:path';
import ts from 'typescript';

const commit = process.argv[2];
const root = commit ? mkdtempSync(join(tmpdir(), 'house-')) : '.';
if (commit)
  execFileSync('tar', ['x', '-C', root], {
    input: execFileSync('git', ['archive', commit, 'src'], { maxBuffer: 1e9 }),
  });

const paths = readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true })
  .filter((one) => one.isFile() && /\.tsx?$/.test(one.name))
  .map((one) => resolve(one.parentPath, one.name));
const known = new Set(paths);
const lines = [];
const functions = [];
const imports = new Map();
for (const path of paths) {
  const text = readFileSync(path, 'utf8');
  lines.push(text.split('\n').length - 1);
  const file = ts.createSourceFile(
    path,
    text,
    ts.ScriptTarget.Latest,
    true,
    path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS,
  );
  const lineAt = (at) => file.getLineAndCharacterOfPosition(at).line;
  (function visit(node) {
    if (ts.isFunctionLike(node) && node.body) functions.push(lineAt(node.end) - lineAt(node.getStart()) + 1);
    ts.forEachChild(node, visit);
  })(file);
  const named = [...text.matchAll(/(?:from|import\() ?'(\.[^']+)'/g)].flatMap(
    ([, name]) =>
      [name, `${name}.ts`, `${name}.tsx`, `${name}/index.tsx`]
        .map((one) => resolve(dirname(path), one))
        .find((one) => known.has(one)) ?? [],
  );
  imports.set(path, new Set(named));
}

const importers = new Map(paths.map((path) => [path, 0]));
for (const named of imports.values()) for (const one of named) importers.set(one, importers.get(one) + 1);

/** Files that lie on a way back to themselves. */
function inCycles() {
  const reached = (from) => {
    const seen = new Set();
    const next = [...imports.get(from)];
    while (next.length > 0) {
      const one = next.pop();
      if (seen.has(one)) continue;
      seen.add(one);
      next.push(...imports.get(one));
    }
    return seen;
  };
  return paths.filter((path) => reached(path).has(path)).length;
}

const part = (values, share) => values.toSorted((a, b) => a - b)[Math.floor(share * (values.length - 1))];
const perFolder = new Map();
for (const path of paths) perFolder.set(dirname(path), [...(perFolder.get(dirname(path)) ?? []), path]);
console.table({
  files: paths.length,
  folders: perFolder.size,
  'most files in a folder': Math.max(...[...perFolder.values()].map((some) => some.length)),
  'folders over 15 files': [...perFolder.values()].filter((some) => some.length > 15).length,
  'lines of a file, p50': part(lines, 0.5),
  'lines of a file, p90': part(lines, 0.9),
  'files over 200 lines': lines.filter((count) => count > 200).length,
  functions: functions.length,
  'lines of a function, p50': part(functions, 0.5),
  'lines of a function, p90': part(functions, 0.9),
  'functions over 40 lines': functions.filter((count) => count > 40).length,
  'files with one importer': [...importers.values()].filter((count) => count === 1).length,
  'most importers': Math.max(...importers.values()),
  'files in a cycle': inCycles(),
  'kilobytes of source': Math.round(paths.reduce((sum, path) => sum + readFileSync(path).length, 0) / 1000),
});
const busiest = [...importers].toSorted((one, other) => other[1] - one[1]).slice(0, 5);
console.log(
  'Imported most:',
  busiest.map(([path, count]) => `${relative(resolve(root, 'src'), path)} ${count}`).join(', '),
);
if (commit) rmSync(root, { recursive: true });
