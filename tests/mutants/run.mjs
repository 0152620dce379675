// Changes the source one spot at a time and asks whether a test fails: `npm run mutants -- planner shop/jar`.
// SAMPLE=40 takes so many lines of each room at random, by SEED; without it every line is tried.
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

const filesOf = (room) =>
  existsSync(`src/${room}`)
    ? readdirSync(`src/${room}`, { recursive: true })
        .map((file) => `src/${room}/${file}`)
        .filter((file) => file.endsWith('.ts') && !/\/(phone|demo)\/|\.worker\.ts$/.test(file))
        .sort()
    : [];

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

const mutate = rooms.flatMap((room) => {
  const files = filesOf(room);
  if (files.length === 0) throw new Error(`There is no room src/${room}.`);
  return sample > 0 ? drawn(files.flatMap(linesOf)) : files;
});
const results = await new Stryker({
  mutate,
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'tests/mutants/vitest.config.ts', related: true },
  coverageAnalysis: 'perTest',
  concurrency: Number(process.env.AT_ONCE ?? 2),
  reporters: ['dots'],
  // On a busy machine a run that is merely slow would count as caught.
  timeoutMS: 30_000,
  timeoutFactor: 4,
  tempDirName: 'coverage/mutants',
  // What a text says and what a number that never reaches a test is, tells nothing of behaviour.
  mutator: { excludedMutations: ['StringLiteral', 'Regex', 'ObjectLiteral'] },
}).runMutationTest();

const isCaught = ({ status }) => status === 'Killed' || status === 'Timeout';
const isReal = ({ status }) => isCaught({ status }) || status === 'Survived' || status === 'NoCoverage';
console.log('');
for (const { fileName, location, replacement, status } of results)
  if (status === 'Survived' || status === 'NoCoverage') {
    const { start, end } = location;
    const lines = readFileSync(fileName, 'utf8').split('\n');
    const was =
      start.line === end.line
        ? lines[start.line - 1].slice(start.column - 1, end.column - 1)
        : lines[start.line - 1].trim();
    const name = fileName.replace(`${process.cwd()}/`, '');
    console.log(
      `${status === 'Survived' ? 'survived ' : 'no test  '} ${name}:${start.line}  ${was}  ->  ${replacement.split('\n')[0]}`,
    );
  }
console.table(
  Object.fromEntries(
    rooms.map((room) => {
      const here = results.filter(
        ({ fileName, ...rest }) => fileName.includes(`/src/${room}`) && isReal(rest),
      );
      const caught = here.filter(isCaught).length;
      const silent = here.filter(({ status }) => status === 'Timeout').length;
      return [
        room,
        {
          mutants: here.length,
          caught,
          'by silence': silent,
          percent: Math.round((1000 * caught) / here.length) / 10,
        },
      ];
    }),
  ),
);
