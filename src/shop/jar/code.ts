const JAR_LINK = /#\/mix\/jar\/([0-9a-f-]{36})/i;

// Crockford's base 32 without letters that a pen confuses: no I, L, O, U.
const LETTERS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const LENGTH = 6;

/** The short code of a jar for its lid, "K7Q-2MD": the last thirty bits of its id, which are drawn at random. */
export function jarCode(id: string): string {
  let bits = Number.parseInt(id.replaceAll('-', '').slice(-8), 16) % 2 ** 30;
  let code = '';
  for (let i = 0; i < LENGTH; i++) {
    code = (LETTERS[bits % 32] ?? '') + code;
    bits = Math.floor(bits / 32);
  }
  return `${code.slice(0, 3)}-${code.slice(3)}`;
}

/** A code as somebody typed it or a camera read it, in its one spelling; undefined when it is none. */
export function readCode(text: string): string | undefined {
  const letters = text.toUpperCase().replace(/[\s-]/g, '').replaceAll('O', '0').replace(/[IL]/g, '1');
  const isCode = letters.length === LENGTH && [...letters].every((letter) => LETTERS.includes(letter));
  return isCode ? `${letters.slice(0, 3)}-${letters.slice(3)}` : undefined;
}

/** The id of the jar that a label's link names; undefined for a foreign code. */
export const jarIdOf = (text: string): string | undefined => JAR_LINK.exec(text)?.[1]?.toLowerCase();
