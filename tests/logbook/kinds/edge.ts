import { expect, test } from 'vitest';
import { parseEntry } from '../../../src/logbook/entry';
import later from '../../reference/logbook-entries-v2.json';
import { A_YEAR_ON_MS, SHIPPED } from '../entries';

type Raw = Readonly<Record<string, unknown>>;

const ofKind = (some: readonly Raw[], kind: string): Raw =>
  some.find((one) => one['kind'] === kind) ?? expect.unreachable(`no ${kind}`);
/** An entry of a kind as version 1 wrote it. */
export const shipped = (kind: string): Raw => ofKind(SHIPPED, kind);
/** An entry of a kind as version 2 writes it. */
export const second = (kind: string): Raw => ofKind(later.entries, kind);

/** The same thing so many times. */
export const times = <One>(count: number, one: One): One[] => Array.from({ length: count }, () => one);
/** So many things, each made from its number. */
export const numbered = <One>(count: number, one: (n: number) => One): One[] =>
  Array.from({ length: count }, (_, n) => one(n));
export const typed = (text: string, unit: string) => ({ text, unit });

const faultsOf = (from: Raw): readonly string[] => {
  const parsed = parseEntry(from, A_YEAR_ON_MS);
  return parsed.ok ? [] : parsed.failure.map(({ path }) => path);
};

/** Holds what a field of an entry takes to its limits, and what it refuses beyond them, and where the fault is said to be. */
export function edge(
  what: string,
  from: Raw,
  field: string,
  takes: readonly unknown[],
  refuses: readonly unknown[],
  path = field,
): void {
  test(`${what}: taken to its limits, and refused beyond them`, () => {
    for (const value of takes)
      expect(faultsOf({ ...from, [field]: value }), JSON.stringify(value)).toEqual([]);
    for (const value of refuses)
      expect(faultsOf({ ...from, [field]: value }), JSON.stringify(value)).toContain(path);
  });
}
