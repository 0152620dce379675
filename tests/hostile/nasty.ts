import fc from 'fast-check';

const deep = (levels: number): unknown => {
  let value: unknown = 1;
  for (let level = 0; level < levels; level++) value = level % 2 ? [value] : { a: value };
  return value;
};
const ownProto = (value: unknown): unknown => JSON.parse(`{"__proto__":${JSON.stringify(value)}}`);

/** Texts that have broken programs before: markup, formulas, directions, halves of letters, lengths, names that objects have. */
export const NASTY_TEXTS = [
  '<script>globalThis.hacked=1</script>',
  '<img src=x onerror="globalThis.hacked=1">',
  '"><svg onload=globalThis.hacked=1>',
  "javascript:globalThis.hacked=1//'",
  '{{constructor.constructor("globalThis.hacked=1")()}}',
  '=HYPERLINK("http://example.invalid")',
  '\u202eevil\u202c',
  'שלום مرحبا',
  '\ud83d\ude80\ud83c\udffd\u200d\ud83d\udd27',
  '\ud800',
  '\u0000\u0007\u001b[31m',
  '..\\../../etc/passwd',
  '%00%ff%',
  '__proto__',
  'constructor',
  'toString',
  'x'.repeat(10_000),
  'x'.repeat(100_000),
  '9'.repeat(400),
  '1e999',
  '-0',
  'NaN',
] as const;

/** Values of the wrong type, size or depth. */
export const nasty = fc.oneof(
  fc.constantFrom<unknown>(...NASTY_TEXTS),
  fc.constantFrom<unknown>(
    null,
    true,
    0,
    -1,
    1e308,
    -1e308,
    5e-324,
    Number.MAX_SAFE_INTEGER + 2,
    [],
    {},
    [null],
    { length: 1e9 },
    ownProto({ hacked: 1 }),
    { constructor: { prototype: { hacked: 1 } } },
    deep(50),
    deep(2_000),
    Array.from({ length: 2_000 }, () => 'x'),
  ),
  fc.jsonValue({ maxDepth: 3 }),
);

/** The value with something nasty at a place in it, or with a field gone or added. */
export function harmed(value: unknown, path: readonly number[], by: unknown, how: number): unknown {
  if (typeof value !== 'object' || value === null || path.length === 0) return by;
  const [first = 0, ...rest] = path;
  const keys = Object.keys(value);
  const key = keys[first % Math.max(1, keys.length)];
  const copy = (Array.isArray(value) ? [...value] : { ...value }) as Record<string, unknown>;
  if (key === undefined || how === 0) return Object.assign(copy, { extra: by });
  if (how === 1 && rest.length === 0) delete copy[key];
  else copy[key] = harmed((value as Record<string, unknown>)[key], rest, by, how);
  return copy;
}

/** Whether something has got into the prototype that every object has, or has run. */
export const isPolluted = (): boolean =>
  'hacked' in {} || 'hacked' in globalThis || 'hacked' in [] || 'hacked' in (() => undefined);
