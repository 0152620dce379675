// Changes the source one spot at a time and asks whether a test fails: `npm run mutants -- planner shop/jar science/film.ts`.
// SAMPLE=40 takes so many lines of each room at random, by SEED; without it every line is tried. The room's own tests
// are asked first; what they let pass is tried once more with all the others, unless NEAR=1.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { Stryker } from '@stryker-mutator/core';

const ROOMS = ['science', 'estimator', 'planner', 'logbook', 'reminders', 'shop', 'verdicts', 'actions'];
const rooms = process.argv.slice(2).length > 0 ? process.argv.slice(2) : ROOMS;
const sample = Number(process.env.SAMPLE ?? 0);
let state = Number(process.env.SEED ?? 1);

/** Lehmer's generator (Park and Miller 1988): the same lines for the same seed. */
function random() {
  state = (state * 48_271) % 2_147_483_647;
  return state / 2_147_483_647;
}

function filesOf(room) {
  const path = `src/${room}`;
  if (!existsSync(path)) return [];
  if (path.endsWith('.ts')) return [path];
  return readdirSync(path, { recursive: true })
    .map((file) => `${path}/${file}`)
    .filter((file) => file.endsWith('.ts') && !/\/(phone|demo)\/|\.worker\.ts$/.test(file))
    .sort();
}

function linesOf(file) {
  const lines = readFileSync(file, 'utf8').split('\n');
  return lines.flatMap((text, index) =>
    /^\s*(\/\/|\*|\/\*|import |export type|export interface|readonly |[}\])]*[;,]?$)/.test(text)
      ? []
      : [`${file}:${index + 1}-${index + 1}`],
  );
}

function drawn(lines) {
  const left = [...lines];
  return Array.from({ length: Math.min(sample, left.length) }, () =>
    left.splice(Math.floor(random() * left.length), 1),
  ).flat();
}

/** Tries every change of the given files, lines or places with the tests of one folder. */
function tried(mutate, tests) {
  process.env.MUTANT_TESTS = tests;
  return new Stryker({
    mutate,
    testRunner: 'vitest',
    plugins: ['@stryker-mutator/vitest-runner'],
    vitest: { configFile: 'tests/mutants/vitest.config.ts', related: true },
    coverageAnalysis: 'perTest',
    concurrency: Number(process.env.AT_ONCE ?? 2),
    reporters: ['dots'],
    // On a busy machine a run that is merely slow would count as caught.
    timeoutMS: 20_000,
    timeoutFactor: 2,
    dryRunTimeoutMinutes: 30,
    tempDirName: 'coverage/mutants',
    // What a text says and what a number that never reaches a test is, tells nothing of behaviour.
    mutator: { excludedMutations: ['StringLiteral', 'Regex', 'ObjectLiteral'] },
  }).runMutationTest();
}

const isCaught = ({ status }) => status === 'Killed' || status === 'Timeout';
const isLeft = ({ status }) => status === 'Survived' || status === 'NoCoverage';
const placeOf = ({ fileName, location: { start, end } }) =>
  `${fileName.replace(`${process.cwd()}/`, '')}:${start.line}:${start.column - 1}-${end.line}:${end.column - 1}`;
const nameOf = (mutant) => `${placeOf(mutant)} ${mutant.replacement}`;

const results = [];
for (const room of rooms) {
  const files = filesOf(room);
  if (files.length === 0) throw new Error(`There is no room src/${room}.`);
  const mutate = sample > 0 ? drawn(files.flatMap(linesOf)) : files;
  for (const mutant of await tried(mutate, `tests/${room.split('/')[0]}`)) results.push({ ...mutant, room });
}
const left = new Map(results.filter(isLeft).map((mutant) => [nameOf(mutant), mutant]));
if (left.size > 0 && process.env.NEAR !== '1')
  for (const again of await tried([...left.values()].map(placeOf), 'tests')) {
    const mutant = left.get(nameOf(again));
    if (mutant) mutant.status = again.status;
  }

const NAMES = { Survived: 'survived ', NoCoverage: 'no test  ', Timeout: 'silent   ' };
console.log('');
for (const { fileName, location, replacement, status } of results.filter((one) => one.status in NAMES)) {
  const { start, end } = location;
  const lines = readFileSync(fileName, 'utf8').split('\n');
  const was =
    start.line === end.line
      ? lines[start.line - 1].slice(start.column - 1, end.column - 1)
      : lines[start.line - 1].trim();
  const name = fileName.replace(`${process.cwd()}/`, '');
  console.log(`${NAMES[status]} ${name}:${start.line}  ${was}  ->  ${replacement.split('\n')[0]}`);
}
console.table(
  Object.fromEntries(
    rooms.map((room) => {
      const here = results.filter((mutant) => mutant.room === room);
      const caught = here.filter(isCaught).length;
      const silent = here.filter(({ status }) => status === 'Timeout').length;
      const mutants = caught + here.filter(isLeft).length;
      return [
        room,
        { mutants, caught, 'by silence': silent, percent: Math.round((1000 * caught) / mutants) / 10 },
      ];
    }),
  ),
);
