import type { Lines } from '../in-si';

/** What the phones of the shop are called, by their mark. */
export const foldPhones = (lines: Lines) => ({
  phones: new Map(lines.of('phone-named').map(({ phone, name }) => [phone, name])) as ReadonlyMap<
    string,
    string
  >,
});
