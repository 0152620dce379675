import type { LightNames } from './reading-table';

/** Where in a row each kind of value stands; undefined or empty where the file has none. */
export interface ReadingColumns {
  readonly name: number | undefined;
  readonly illuminant: number | undefined;
  readonly observer: number | undefined;
  readonly lab: readonly [number, number, number] | undefined;
  readonly xyz: readonly [number, number, number] | undefined;
  readonly bands: readonly { readonly nm: number; readonly index: number }[];
  /** Light named inside a column heading, as in `L*(10°/D65)`. */
  readonly light: LightNames;
}

/** A heading without its brackets and marks, in small letters: `L*(10°/D65)` and `LAB_L` become `l` and `labl`. */
const plain = (heading: string): string =>
  heading
    .replace(/\(.*$/, '')
    .toLowerCase()
    .replace(/[^a-z0-9]/g, '');

const SPECTRAL_HEADING = /^(?:spectral|spec|nm|r)*(\d{3})(?:nm)?$/;

function lightInHeadings(headings: readonly string[]): LightNames {
  const inside = headings.map((heading) => /\(([^)]*)\)/.exec(heading)?.[1] ?? '').join(' ');
  const illuminant = /\b(LED-B3|D50|D55|D65|D75|F2|F7|F11|A|C)\b/i.exec(inside)?.[1];
  const observer = /(?:^|[^\dA-Z])(2|10)(?!\d)/i.exec(inside)?.[1];
  return { ...(illuminant && { illuminant }), ...(observer && { observer }) };
}

/** Finds the columns that mean something to us by their headings. */
export function findColumns(headings: readonly string[]): ReadingColumns {
  const names = headings.map(plain);
  const find = (...wanted: string[]): number | undefined =>
    wanted.map((name) => names.indexOf(name)).find((index) => index >= 0);
  const three = (...groups: [string[], string[], string[]]): [number, number, number] | undefined => {
    const [one, two, last] = groups.map((group) => find(...group));
    return one === undefined || two === undefined || last === undefined ? undefined : [one, two, last];
  };
  const bands = names.flatMap((name, index) => {
    const nm = SPECTRAL_HEADING.exec(name)?.[1];
    return nm === undefined ? [] : [{ nm: Number(nm), index }];
  });
  return {
    name: find('samplename', 'name', 'sample', 'sampleid', 'id'),
    illuminant: find('illuminant', 'light'),
    observer: find('observer', 'observerangle'),
    lab: three(['labl', 'l', 'ciel'], ['laba', 'a', 'ciea'], ['labb', 'b', 'cieb']),
    xyz: three(['xyzx', 'x'], ['xyzy', 'y'], ['xyzz', 'z']),
    bands: bands.sort((one, other) => one.nm - other.nm),
    light: lightInHeadings(headings),
  };
}
