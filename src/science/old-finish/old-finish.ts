/** What an old finish may be, by what it does under the next coat. */
export const OLD_CLASSES = [
  'wax-or-oil',
  'shellac',
  'waterborne',
  'solvent-lacquer',
  'oil-varnish',
  'cured',
] as const;
export type OldClass = (typeof OLD_CLASSES)[number];

/** Not knowing is one of the answers. */
export type OldFinish = OldClass | 'unknown';

/** One number for each class. */
export type ByClass = { readonly [F in OldClass]: number };
