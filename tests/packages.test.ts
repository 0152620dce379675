import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

interface Package {
  readonly license?: string;
  readonly resolved?: string;
  readonly dev?: boolean;
  readonly optional?: boolean;
  readonly devOptional?: boolean;
  readonly dependencies?: Readonly<Record<string, string>>;
}
const lock = readFileSync('package-lock.json', 'utf8');
const packages = Object.entries((JSON.parse(lock) as { packages: Record<string, Package> }).packages).filter(
  ([name]) => name !== '',
);
const shipped = packages.filter(([, { dev, optional, devOptional }]) => !dev && !optional && !devOptional);

// Licences that let an app be given away with its source under another; the last two for tools alone.
const SHIPPED_LICENCES = [
  'MIT',
  'ISC',
  'Apache-2.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  '0BSD',
  'BlueOak-1.0.0',
  'Unlicense',
];
const TOOL_LICENCES = [...SHIPPED_LICENCES, 'MPL-2.0', 'CC-BY-4.0', 'MIT OR Apache-2.0', '(MIT OR CC0-1.0)'];
/** The lock file names no licence of it; the text in the package is that of BSD-3-Clause. */
const NAMED_IN_TEXT_ALONE = 'node_modules/parse-cache-control';
const MOST_SHIPPED = 15; // five of them fetched by phones that have joined a hub alone

/** Each licence and how many packages stand under it, the commonest first. */
function licencesOf(some: typeof packages): string {
  const counts = new Map<string, number>();
  for (const [, { license = 'none named' }] of some) counts.set(license, (counts.get(license) ?? 0) + 1);
  const commonestFirst = [...counts].sort(([, a], [, b]) => b - a);
  return commonestFirst.map(([license, count]) => `${license} ${count}`).join(', ');
}

test('what the phone gets is little, and under licences that allow it', () => {
  const tools = packages.filter((one) => !shipped.includes(one));
  console.log(`packages in the app: ${shipped.length} (${licencesOf(shipped)})`);
  console.log(`tools: ${tools.length} (${licencesOf(tools)})`);
  expect(shipped.length).toBeLessThanOrEqual(MOST_SHIPPED);
  expect(shipped.filter(([, { license = '' }]) => !SHIPPED_LICENCES.includes(license))).toEqual([]);
});

test('the tools are under licences that allow their use', () => {
  const named = packages.filter(([name]) => name !== NAMED_IN_TEXT_ALONE);
  expect(named.filter(([, { license = '' }]) => !TOOL_LICENCES.includes(license))).toEqual([]);
});

test('the lock file names no address to fetch from', () => {
  expect(packages.filter(([, { resolved }]) => resolved !== undefined)).toEqual([]);
  expect(lock).not.toMatch(/https?:\/\/[^"]*registry/);
});

test('what a package asks for as the latest is pinned, or the lock file would not hold', () => {
  const { overrides } = JSON.parse(readFileSync('package.json', 'utf8')) as { overrides: object };
  const asked = packages.flatMap(([, { dependencies = {} }]) => Object.entries(dependencies));
  const loose = asked.filter(([name, version]) => /^[a-z]+$/.test(version) && !(name in overrides));
  expect(loose).toEqual([]);
});
