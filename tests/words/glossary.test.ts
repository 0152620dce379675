import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

// One word for one thing: what each thing is called, and what it is never called.
const GLOSSARY: readonly { readonly say: string; readonly never: RegExp }[] = [
  { say: 'log a coat, logged; a coat goes on', never: /\b(lay|laid|lays) (a|the|an|it|on|down|coats?)\b/i },
  { say: 'Ready, Perhaps, Wait, Held', never: /\bmay (take|have) a coat\b|\bblocked\b/i },
  // A film that still sinks is hard by a day; it is fully hardened once it sinks no more.
  {
    say: 'Hard by; later Fully hardened by',
    never: /\b(settle[sd]? (by|hard)|settled|fully hard)\b(?!ened)/i,
  },
  { say: 'soaks up', never: /\bdrinks?\b/i },
  { say: 'Optional', never: /\bmay stay empty\b/i },
  { say: 'Save, Saved', never: /\b(Keep (it|the (sheet|week|room|recipe|piece))|Kept)\b[.]?$/ },
  {
    say: 'Archive; Finish and Reopen; Withdraw',
    never: /\bput (it )?away\b|\btake (it|the promise) back\b/i,
  },
  { say: 'save a backup, restore', never: /\bbring (it )?in\b|\bimported\b|\bwrite a backup\b/i },
  { say: 'enter (a number)', never: /\bGive (an?|both|at (least|most)|whole|one|a whole) /i },
  { say: 'assuming, worked out', never: /\breckon|\banew\b|\bI shall\b|\bnought\b|\bas likely as not\b/i },
  { say: 'the jar is empty', never: /\bjars?\b[^.]*\bused up\b/i },
  { say: 'evaporates', never: /\bleaves first\b/i },
  { say: 'Abandon', never: /\bgiven? (this |it )?up\b/i },
  { say: 'degrees of difference in °C or °F', never: /\d K\b/ },
  { say: 'over a year', never: /\bmore than a year\b/i },
  { say: 'Skipped', never: /\bpassed over\b/i },
  { say: 'promised date', never: /\b(day promised|promised day)\b/i },
  { say: 'check for sinking', never: /\blook for sink\b/i },
  { say: 'level-sand, rub out', never: /\blevel sand|\bflat-?sand|\b(buff|polish) (it )?out\b/i },
  { say: 'place (on a piece)', never: /\b(?<!time )zones?\b/i },
  { say: 'characters (of a reason)', never: /\b(ten|\d+) letters\b|\bsigns from\b/i },
  { say: 'mask', never: /\brespirator\b/i },
  { say: 'closed metal can', never: /\bsealed (metal )?can\b/i },
  { say: 'data sheet, safety data sheet', never: /\bdatasheets?\b|\bM?SDS\b|\bTDS\b/ },
  { say: 'comes first', never: /\boutrank/i },
  { say: 'points to', never: /\bspeaks? for\b/i },
  { say: 'a factor of two', never: /\ba factor (\d|x)/i },
  { say: 'dew point', never: /\bdewpoint\b/i },
  { say: 'Volume solids', never: /^Solids by volume$/ },
  { say: 'Appearance, Altitude, Units', never: /\bheight of the shop\b|\bthe look\b/i },
  { say: 'Test sent', never: /\bit rang\b|\bcalendar rings\b/i },
];

const files = readdirSync('src/words', { recursive: true, encoding: 'utf8' }).filter((name) =>
  name.endsWith('.ts'),
);

/** The literal texts of a file: everything between quotes, its placeholders taken out. */
const literals = (source: string): string[] =>
  source
    .split('\n')
    .filter((line) => !/^\s*(\/\/|\/?\*)/.test(line) && !/^(import|export .* from) /.test(line))
    .flatMap((line) =>
      [...line.matchAll(/'((?:[^'\\]|\\.)*)'|`([^`]*)`/g)].map(
        ([, plain, template]) => plain ?? template ?? '',
      ),
    )
    .filter((text) => !/^[a-z-]+$/i.test(text) || /^[A-Z]/.test(text)) // a name in the code
    .map((text) => text.replace(/\$\{[^}]*\}/g, '3'));

/** Stands for whatever a text takes: a number, a word, an object with anything in it. */
const anything: unknown = new Proxy(() => anything, {
  get: (_, key) =>
    key === Symbol.toPrimitive ? () => 3 : key === Symbol.iterator ? [][Symbol.iterator] : anything,
  apply: () => anything,
});
const GIVEN: readonly unknown[] = [anything, 1, 3, 'us', 'metric', 'x', true, ['x', 'y']];

/** Every text that a value says, its functions asked with what they may take. */
function said(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (typeof value === 'function') return GIVEN.flatMap((one) => said(answer(value as Ask, one)));
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(said) : [];
}
type Ask = (...given: unknown[]) => unknown;
function answer(ask: Ask, one: unknown): unknown {
  try {
    return String(ask(...Array<unknown>(8).fill(one)));
  } catch {
    return undefined; // it takes something else
  }
}

const faults = (text: string): string[] =>
  GLOSSARY.filter(({ never }) => never.test(text)).map(({ say }) => `“${text}”: say ${say}`);

const modules = import.meta.glob('../../src/words/**/*.ts', { eager: true });
const texts = new Set([
  ...files.flatMap((name) => literals(readFileSync(join('src/words', name), 'utf8'))),
  ...Object.values(modules).flatMap(said),
]);

test('no text calls a thing by another name than the glossary does', () => {
  expect([...texts].flatMap(faults)).toEqual([]);
});

test('every text of the app is looked at, and the outputs of those that take something', () => {
  expect(texts.size).toBeGreaterThan(2000);
  expect(texts).toContain('Trial 1, the base');
  expect(texts).toContain(
    'Printed at 62 by 45 mm (2.4 by 1.8 in). The code and the link lead back to this jar without a network.',
  );
});

test.each([
  'Lay a coat on it',
  'Settled by 3 May',
  'Give a value above 0.',
  'Tell the day promised',
  'within 3 K',
  'This zone is not on this piece.',
  'give or take a factor 1.3',
])('“%s” is noticed', (text) => {
  expect(faults(text)).toHaveLength(1);
});
