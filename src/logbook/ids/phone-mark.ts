/*
 * Which phone logged an entry stands in its id: once a phone has joined a hub, the last forty random bits of its ids are its mark. So
 * the entries stay as they are, and older apps read them. A phone that works alone has no mark.
 */
const SIGNS = 10;

/** A new mark, at random. */
export const newMark = (): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(SIGNS / 2)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');

/** The mark of the phone that logged an entry; of an entry from before its phone had one, something that is no phone's. */
export const markOf = (id: string): string => id.slice(-SIGNS);
