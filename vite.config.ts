/// <reference types="vitest/config" />
import { dirname, resolve } from 'node:path';
import preact from '@preact/preset-vite';
import { defineConfig, type Plugin, type Rolldown } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

const CONTENT_SECURITY_POLICY = [
  "default-src 'self'",
  "img-src 'self' blob:",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'self'",
  "object-src 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types default',
].join('; ');

/** What a page cannot say of itself and its server must: the app is not framed, and asks for nothing but the camera. */
const HEADERS = {
  'Content-Security-Policy': "frame-ancestors 'none'",
  'Permissions-Policy':
    'accelerometer=(), browsing-topics=(), display-capture=(), geolocation=(), gyroscope=(), magnetometer=(), microphone=(), midi=(), payment=(), serial=(), usb=(), camera=(self), screen-wake-lock=(self), web-share=(self)',
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
};

/** Writes the policy into the built page only: the dev server injects <style> elements, which it forbids. */
function contentSecurityPolicy(): Plugin {
  return {
    name: 'content-security-policy',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: CONTENT_SECURITY_POLICY },
        injectTo: 'head-prepend',
      },
    ],
  };
}

/** Builds the workers with the pages, so that what both need is kept once (a worker built by itself has its own copy). */
function workersBesidePages(): Plugin {
  return {
    name: 'workers-beside-pages',
    apply: 'build',
    enforce: 'pre',
    transform(code, id) {
      return code.replaceAll(/new URL\('([^']+\.worker\.ts)', import\.meta\.url\)/g, (_, worker: string) => {
        const file = this.emitFile({ type: 'chunk', id: resolve(dirname(id), worker) });
        return `import.meta.ROLLUP_FILE_URL_${file}`;
      });
    },
  };
}

const FIRST = ['index.html'];
const BEHIND = [
  'actions/keep/fill-demo.ts',
  'actions/all.ts',
  'actions/keep/leave-demo.ts',
  'actions/outlook/outlooks.ts',
  'actions/verdicts/follow-standings.ts',
  'logbook/storage/journal/journal.ts',
  'parts/due/due-reminders.tsx',
  'parts/film/jar-tint.ts',
  'parts/kept/guard-logbook.ts',
  'parts/kept/not-secure.tsx',
  'screens/bench/due-line.tsx',
];
const WORKERS = {
  colour: 'actions/match/colour.worker.ts',
  drying: 'estimator/run/estimator.worker.ts',
  backup: 'logbook/backup/backup.worker.ts',
  journal: 'logbook/storage/journal/journal.worker.ts',
};

type Modules = Rolldown.ChunkingContext;
const reached = new Map<string, Set<string>>();

/** All modules that a file of src needs before it can run. */
function neededBy(entry: string, modules: Modules): ReadonlySet<string> {
  const known = reached.get(entry);
  if (known) return known;
  const found = new Set<string>();
  const visit = (id: string): void => {
    if (found.has(id)) return;
    found.add(id);
    const module = modules.getModuleInfo(id);
    if (!module) throw new Error(`${id} is named in vite.config.ts and is no file of the app.`);
    for (const next of module.importedIds) visit(next);
  };
  visit(resolve(import.meta.dirname, 'src', entry));
  reached.set(entry, found);
  return found;
}

const isNeededBy = (entries: readonly string[], id: string, modules: Modules): boolean =>
  entries.some((entry) => neededBy(entry, modules).has(id));

const workerWith = (id: string, modules: Modules): string | null =>
  Object.entries(WORKERS).find(([, worker]) => isNeededBy([worker], id, modules))?.[0] ?? null;

const COVERAGE_FLOORS = {
  'src/science/**': { lines: 99.5, branches: 88 },
  'src/estimator/**': { lines: 98.5, branches: 90 },
  'src/planner/**': { lines: 98, branches: 93 },
  'src/logbook/**': { lines: 89.5, branches: 84 },
  'src/shop/**': { lines: 95, branches: 81.5 },
};

const unitTests = {
  oxc: { jsx: { runtime: 'automatic' as const, importSource: 'preact' } },
};
/** What keeps nothing between two calls: its tests need no world of their own for each file, which costs half a second. */
const PURE = ['tests/{science,estimator,planner,shop,verdicts,words}/**/*.test.ts'];
const withoutBrowser = {
  environment: 'node' as const,
  setupFiles: ['tests/steady.ts'],
  maxWorkers: 2,
  testTimeout: 120_000,
  hookTimeout: 60_000,
  expect: { poll: { timeout: 20_000 } },
};
const inBrowser = {
  environment: 'node' as const,
  globalSetup: ['tests/browser/global-setup.ts'],
  fileParallelism: false,
  retry: Number(process.env['RETRY'] ?? 0), // in CI only; whoever needed it is named at the end
  testTimeout: 180_000, // what takes ten seconds on a quiet machine may take a minute on a busy one
  hookTimeout: 60_000,
  expect: { poll: { timeout: 20_000 } }, // as patient as a page of the tests is
};

export default defineConfig({
  root: 'src',
  base: './', // works under any address: at a root, or in a folder of a host that serves others too
  publicDir: '../public',
  preview: { headers: HEADERS },
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0, // data: addresses are forbidden by the policy
    manifest: true,
    // What a page needs beside its own file is fetched behind the first screen, so the first script need not list it.
    modulePreload: {
      polyfill: false,
      resolveDependencies: (_, files, { hostType }) => (hostType === 'html' ? files : []),
    },
    minify: 'terser', // 5 kB less to keep than with the usual one
    terserOptions: { ecma: 2020, compress: { passes: 2 } }, // 2 kB less again
    // A few files by what is needed together: what the first screen needs, what is fetched behind it, the pages by place.
    // Many small ones compress worse, each costs a round trip, and the first script names them all. What a worker shares
    // with pages is by itself, because a worker must not load what draws.
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            {
              priority: 7,
              name: (id, modules) =>
                workerWith(id, modules) && isNeededBy(FIRST, id, modules) ? 'ground' : null,
            },
            { priority: 6, minShareCount: 2, name: workerWith },
            { priority: 5, name: (id, modules) => (isNeededBy(FIRST, id, modules) ? 'first' : null) },
            { priority: 4, name: (id, modules) => (isNeededBy(BEHIND, id, modules) ? 'behind' : null) },
            { priority: 3, name: 'piece', test: /screens\/(piece|lay)\/./ },
            { priority: 2, name: 'plan', test: /screens\/(more|plan|air|board)\/./ },
            { priority: 1, name: 'mix', test: /screens\/(match|mix)\/./ },
          ],
        },
      },
    },
  },
  plugins: [
    workersBesidePages(),
    preact(),
    contentSecurityPolicy(),
    VitePWA({
      strategies: 'injectManifest',
      srcDir: 'reminders/phone', // relative to root; built as dist/service-worker.js
      filename: 'service-worker.ts',
      outDir: '../dist',
      registerType: 'prompt', // a new version waits for a quiet moment
      injectRegister: false,
      includeManifestIcons: false, // the phone keeps the icon itself; offline nothing asks for it
      injectManifest: {
        globPatterns: ['**/*.{js,css,html,svg,woff2}'],
        // Only a page served without encryption needs the first, and it has no service worker; without a network there is no hub.
        globIgnores: ['**/sha2-*.js', '**/at-the-hub-*.js'],
        rollupFormat: 'iife',
      },
      manifest: {
        name: 'Coatwait',
        short_name: 'Coatwait',
        description: 'When may I touch it again? A logbook for lacquer, with an honest clock.',
        lang: 'en',
        start_url: './',
        scope: './',
        display: 'standalone',
        background_color: '#14100b',
        theme_color: '#14100b',
        icons: [
          { src: './icons/icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: './icons/icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: './icons/maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
        ],
      },
    }),
  ],
  test: {
    root: '.',
    reporters: ['default', './tests/closing-line.ts', './tests/coverage-lines.ts'],
    // Floors a little under what is seen. Only what can be tested without a browser is counted.
    coverage: {
      include: Object.keys(COVERAGE_FLOORS),
      reporter: [],
      thresholds: COVERAGE_FLOORS,
    },
    projects: [
      {
        ...unitTests,
        test: {
          name: 'unit',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/browser/**', ...PURE],
          ...withoutBrowser,
        },
      },
      {
        ...unitTests,
        test: { name: 'unit-pure', include: PURE, ...withoutBrowser, isolate: false },
      },
      {
        ...unitTests,
        test: {
          name: 'bench',
          include: ['tests/bench/**/*.bench.ts'],
          ...inBrowser,
          testTimeout: 600_000,
        },
      },
      {
        ...unitTests,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          ...inBrowser,
          fileParallelism: true, // one file a core; what is measured for its speed runs alone, in the benches
          maxWorkers: 2,
        },
      },
      {
        ...unitTests,
        test: {
          name: 'bench-browser',
          include: ['tests/browser/**/*.bench.ts'],
          ...inBrowser,
          testTimeout: 600_000,
        },
      },
      {
        ...unitTests,
        test: {
          name: 'shots',
          include: ['tests/browser/{shots,readme-pictures}.ts'],
          ...inBrowser,
          testTimeout: 600_000,
        },
      },
    ],
  },
});
