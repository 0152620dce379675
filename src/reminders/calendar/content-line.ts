import { DAY_MS } from '../../units';

/** Octets a line may have without its line break (RFC 5545, 3.1). */
const MOST_OCTETS = 75;

/** Octets of UTF-8 that the character takes. */
function octets(character: string): number {
  const codePoint = character.codePointAt(0) as number;
  if (codePoint < 0x80) return 1;
  if (codePoint < 0x800) return 2;
  return codePoint < 0x10000 ? 3 : 4;
}

/**
 * A content line with its line break, folded so that no line is longer than 75 octets and no character is cut in two.
 *
 * Source: RFC 5545, 3.1: a fold is CRLF and one space; the space counts among the octets of the line that it begins.
 */
export function contentLine(name: string, value: string): string {
  let folded = '';
  let length = 0;
  for (const character of `${name}:${value}`) {
    const size = octets(character);
    if (length + size > MOST_OCTETS) {
      folded += '\r\n ';
      length = 1;
    }
    folded += character;
    length += size;
  }
  return `${folded}\r\n`;
}

const ESCAPED: Readonly<Record<string, string>> = { '\\': '\\\\', ';': '\\;', ',': '\\,', '\n': '\\n' };

/**
 * A text as the value of a property.
 *
 * Source: RFC 5545, 3.3.11: backslash, semicolon, comma and line break are escaped; control characters other than the tab have no place in it.
 */
export function textValue(text: string): string {
  return text
    .replace(/\p{Surrogate}/gu, '\ufffd') // half a character cannot be written in UTF-8
    .replace(/\r\n?/g, '\n')
    .replace(CONTROL, '')
    .replace(/[\\;,\n]/g, (character) => ESCAPED[character] as string);
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what the RFC leaves out
const CONTROL = /[\u0000-\u0008\u000b-\u001f\u007f]/g;

/** An instant as UTC: "20260302T090000Z" (RFC 5545, 3.3.5, form 2). */
export const utcValue = (instantMs: number): string =>
  `${new Date(instantMs).toISOString().slice(0, 19).replaceAll(/[-:]/g, '')}Z`;

/** A day of the calendar: "20260302" (RFC 5545, 3.3.4). */
export const dateValue = (day: number): string =>
  new Date(day * DAY_MS).toISOString().slice(0, 10).replaceAll('-', '');
