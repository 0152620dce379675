// Fails when what the first screen needs, or what the phone keeps, outgrows its budget. Sizes after gzip.
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';

const FIRST_SCRIPT_BUDGET = 45_000;
const PRECACHE_BUDGET = 380_000;
const ENTRY = 'index.html';

const gzipSize = (file) => gzipSync(readFileSync(`dist/${file}`)).length;
const sum = (files) => [...files].reduce((total, file) => total + gzipSize(file), 0);

const manifest = JSON.parse(readFileSync('dist/.vite/manifest.json', 'utf8'));
const firstScripts = new Set();

function collect(name) {
  const chunk = manifest[name];
  if (!chunk) throw new Error(`The build names no ${name}: the budget would measure nothing.`);
  if (firstScripts.has(chunk.file)) return;
  firstScripts.add(chunk.file);
  for (const next of chunk.imports ?? []) collect(next);
}
collect(ENTRY);

// What the service worker keeps is listed in it: {"revision":...,"url":"..."}.
const precached = new Set(
  [
    ...readFileSync('dist/service-worker.js', 'utf8').matchAll(
      /url:\s*[`"']([^`"']+)[`"']|"url":\s*"([^"]+)"/g,
    ),
  ].map(([, bare, quoted]) => bare ?? quoted),
);
if (!precached.has(ENTRY))
  throw new Error('The service worker keeps no index.html: it would not work offline.');

const rows = [
  { what: 'script of the first screen', bytes: sum(firstScripts), budget: FIRST_SCRIPT_BUDGET },
  { what: `precache, ${precached.size} files`, bytes: sum(precached), budget: PRECACHE_BUDGET },
];
console.table(rows);
if (rows.some(({ bytes, budget }) => bytes > budget)) {
  console.error('Over budget. Load it later, or make it smaller.');
  process.exit(1);
}
