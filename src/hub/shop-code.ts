import { fail, type Result, succeed } from '../result';

/*
 * What a phone joins with, as a person can type it: the hub's password (20 signs, 100 bits), the shop's secret (32 signs, 160 bits) and
 * two signs that tell a slip of the finger. A hub alone gives its password and the two signs: the first phone makes the secret, and the
 * hub never sees it. The signs are those of Crockford's base 32: no I, L, O or U, and whoever writes them is understood.
 */
const SIGNS = '0123456789abcdefghjkmnpqrstvwxyz';
const PASSWORD = 20;
const SECRET = 32;
const CHECK = 2;
const PLACE = '#/more/hub/';

/** What opens the hub, and what opens the shop; a hub of which no shop is known yet has no secret. */
export interface HubCode {
  readonly password: string;
  readonly secret: string | undefined;
}

/** Why a code cannot be used; an address where it was made for another one. */
export type CodeFault =
  | { readonly kind: 'empty' | 'incomplete' | 'mistyped' }
  | { readonly kind: 'elsewhere'; readonly address: string };

/** Signs at random, five bits each. */
function randomSigns(count: number): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(count)), (byte) => SIGNS[byte % 32]).join('');
}

/** A new password of a hub. */
export const newPassword = (): string => randomSigns(PASSWORD);

/** A new secret of a shop. */
export const newSecret = (): string => randomSigns(SECRET);

/** The code as one word. */
export function writeCode({ password, secret = '' }: HubCode): string {
  return `${password}${secret}${checkOf(password + secret)}`;
}

/** The code as it is read out and typed: in fours. */
export const inFours = (code: string): string => code.toUpperCase().replace(/.{4}(?=.)/g, '$& ');

/** The link that carries a code behind its `#`, which no browser sends anywhere. */
export const linkOf = (app: string, code: string): string => `${app.replace(/#.*$/, '')}${PLACE}${code}`;

/**
 * What was typed, pasted, scanned or followed.
 * @param app the address of this app; a link to another one is no use here
 */
export function readCode(said: string, app: string): Result<HubCode, CodeFault> {
  const at = said.indexOf(PLACE);
  const address = said.slice(0, Math.max(0, at)).trim();
  const here = app.replace(/#.*$/, '');
  if (address !== '' && trimmed(address) !== trimmed(here)) return fail({ kind: 'elsewhere', address });
  return fromSigns(at < 0 ? said : said.slice(at + PLACE.length));
}

/** An address with and without its last slash, or with the name of its page, is one address. */
const trimmed = (address: string): string => address.replace(/\/(index\.html)?$/, '');

function fromSigns(said: string): Result<HubCode, CodeFault> {
  const code = said.toLowerCase().replace(/[\s-]/g, '').replace(/o/g, '0').replace(/[il]/g, '1');
  if (code === '') return fail({ kind: 'empty' });
  if ([...code].some((sign) => !SIGNS.includes(sign))) return fail({ kind: 'mistyped' });
  const isWhole = code.length === PASSWORD + CHECK || code.length === PASSWORD + SECRET + CHECK;
  if (!isWhole) return fail({ kind: 'incomplete' });
  const body = code.slice(0, -CHECK);
  if (checkOf(body) !== code.slice(-CHECK)) return fail({ kind: 'mistyped' });
  return succeed({ password: body.slice(0, PASSWORD), secret: body.slice(PASSWORD) || undefined });
}

/** Two signs over the others: a polynomial over the signs modulo the largest prime below 32 squared, so that one wrong or two swapped are told. */
function checkOf(body: string): string {
  let sum = 1;
  for (const sign of body) sum = (sum * 37 + SIGNS.indexOf(sign) + 1) % 1021;
  return `${SIGNS[sum >> 5]}${SIGNS[sum & 31]}`;
}
