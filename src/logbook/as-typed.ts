import { fail, type Result } from '../result';
import { LOGBOOK_WORDS } from '../words/frame/logbook';
import { meansUnit } from '../words/frame/unit-spellings';
import type { Limit } from './limits';
import { plainNumber, type Typed, within } from './typed';
import { UNITS, type Unit } from './unit';

const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};
// Full-width digits, signs and letters stand as far behind the plain ones as all of their block do.
const FULL_WIDTH = /[\uFF01-\uFF5E]/g;
const FULL_WIDTH_SHIFT = 0xfee0;
const narrow = (text: string): string =>
  text.replace(FULL_WIDTH, (sign) => String.fromCharCode(sign.charCodeAt(0) - FULL_WIDTH_SHIFT));

/** One spelling of signs, digits and spaces. */
const tidied = (text: string): string =>
  text
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR[sign]}`)
    .replace(/[\s\u00A0\u2009\u202F]+/g, ' ')
    .replace(/^([+-]?) /, '$1')
    .trim();

const FRACTION = /^([+-]?)(?:(\d{1,6})[ -])?(\d{1,6}) ?[/\u2044] ?(\d{1,6})$/;
const EITHER = /^[+-]?[1-9]\d{0,2},\d{3}$/;
/** Forms of a number in groups of three, and the marks between its groups. */
const GROUPED: readonly (readonly [form: RegExp, marks: RegExp])[] = [
  [/^[+-]?\d{1,3}(?:[ '\u2019]\d{3})+(?:[.,]\d*)?$/, /[ '\u2019]/g], // 1 250,5
  [/^[+-]?\d{1,3}(?:,\d{3}){2,}$/, /,/g], // 1,250,000
  [/^[+-]?\d{1,3}(?:,\d{3})+\.\d*$/, /,/g], // 1,250.5
  [/^[+-]?\d{1,3}(?:\.\d{3}){2,}$/, /\./g], // 1.250.000
  [/^[+-]?\d{1,3}(?:\.\d{3})+,\d*$/, /\./g], // 1.250,5
];
const FIGURES = 9;
const DECIMALS = 12;

/**
 * A worked-out number as the logbook writes it: no exponent, and none of the noise of a division, for 0.55 g in 20 drops is
 * 0.0275 and not 0.027500000000000004. Nine figures, at most twelve decimals.
 */
export function plainText(value: number): string {
  const text = String(Number(value.toPrecision(FIGURES)));
  const [, decimals = ''] = text.split('.');
  if (!text.includes('e') && decimals.length <= DECIMALS) return text;
  return value.toFixed(DECIMALS).replace(/\.?0+$/, '');
}

function fractionText(bare: string): string | undefined {
  const [, sign, whole = '0', over, under] = FRACTION.exec(bare) ?? [];
  if (under === undefined || Number(under) === 0) return undefined;
  return plainText((sign === '-' ? -1 : 1) * (Number(whole) + Number(over) / Number(under)));
}

function groupedText(bare: string): string | undefined {
  const found = GROUPED.find(([form]) => form.test(bare));
  return found && bare.replace(found[1], '').replace(',', '.');
}

/** A number without its unit as the logbook writes it: "1 1/2" is "1.5". Undefined where it is no number, or may be two. */
function plainOf(bare: string): string | undefined {
  if (EITHER.test(bare)) return undefined;
  if (plainNumber(bare) !== undefined) return bare;
  return fractionText(bare) ?? groupedText(bare);
}

const UNIT_BEHIND = /^(.*?[\d.,½⅓⅔¼¾⅛⅜⅝⅞])\s*([^\d\s.,½⅓⅔¼¾⅛⅜⅝⅞/⁄-].*)$/u;

/** What a person typed: the number without its unit, and the unit where one of those offered stands behind it. */
function parted(typed: string, units: readonly string[]): { readonly bare: string; readonly unit?: string } {
  const text = narrow(typed);
  const bare = tidied(text);
  const found = UNIT_BEHIND.exec(text.trim());
  const unit = found && units.find((one) => meansUnit(found[2] ?? '', one));
  return found && unit ? { bare: tidied(found[1] ?? ''), unit } : { bare };
}

/**
 * The two numbers that a text with one comma before three digits may mean, as the logbook writes them: 5,280 is five thousand
 * or a little over five. Undefined for what means one thing, or nothing.
 */
export function eitherOf(
  text: string,
  units: readonly string[] = [],
): { readonly numbers: readonly [string, string]; readonly unit?: string } | undefined {
  const { bare, ...unit } = parted(text, units);
  return EITHER.test(bare)
    ? { numbers: [bare.replace(',', ''), bare.replace(',', '.')], ...unit }
    : undefined;
}

/** A typed text as the logbook writes it, with the unit typed behind it where it is one of the field's; undefined where it is no one number. */
export function inPlain(
  text: string,
  units: readonly string[] = [],
): { readonly text: string; readonly unit?: string } | undefined {
  const { bare, unit } = parted(text, units);
  const plain = plainOf(bare);
  if (plain === undefined) return undefined;
  return unit === undefined ? { text: plain } : { text: plain, unit };
}

/** The number that a person typed; undefined when it is not one number, or may be two. A unit may stand behind it. */
export function parseNumber(text: string, unit?: string): number | undefined {
  const plain = inPlain(text, unit === undefined ? [] : [unit]);
  return plain && plainNumber(plain.text);
}

/** The typed quantity in SI, or a sentence that says what would be accepted or asks what was meant. */
export function readTyped(typed: Typed, limit: Limit): Result<number, string> {
  const units = [typed.unit, ...limit.units];
  const either = eitherOf(typed.text, units);
  if (either) return fail(LOGBOOK_WORDS.eitherNumber(...either.numbers));
  const plain = inPlain(typed.text, units);
  const amount = plain && plainNumber(plain.text);
  if (amount === undefined) return fail(LOGBOOK_WORDS.notANumber);
  return within(amount, (plain?.unit ?? typed.unit) as Unit, limit);
}

const isTyped = (from: object): from is Typed =>
  'text' in from && typeof from.text === 'string' && 'unit' in from && typeof from.unit === 'string';

/** What was said, with every typed number as the logbook writes it; what is no number stays for the schema to refuse. */
export function withPlainNumbers<Said>(said: Said): Said {
  if (typeof said !== 'object' || said === null) return said;
  if (Array.isArray(said)) return said.map((one: unknown) => withPlainNumbers(one)) as Said;
  if (isTyped(said)) return { ...said, ...inPlain(said.text, [said.unit, ...Object.keys(UNITS)]) };
  return Object.fromEntries(
    Object.entries(said).map(([key, value]) => [key, withPlainNumbers(value)]),
  ) as Said;
}
