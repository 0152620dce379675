/*
 * Everything that leaves for the hub is sealed here (AES-256-GCM, NIST SP 800-38D), with a nonce of its own and with its subject
 * authenticated: a message cannot be read, forged, or put in another's place. Name and key of a shop come from its secret by HKDF
 * (RFC 5869), so that the hub knows the name and cannot know the key.
 */
const VERSION = 1;
const NONCE_BYTES = 12;
const HEAD_BYTES = 1 + NONCE_BYTES;
const TAG_BYTES = 16;
const text = new TextEncoder();

/** A shop as the hub names it, and its key. */
export interface ShopKey {
  readonly name: string;
  readonly key: CryptoKey;
}

/** Name and key of the shop with this secret. */
export async function shopKey(secret: string): Promise<ShopKey> {
  const from = await crypto.subtle.importKey('raw', text.encode(secret), 'HKDF', false, [
    'deriveBits',
    'deriveKey',
  ]);
  const by = (info: string) => ({
    name: 'HKDF',
    hash: 'SHA-256',
    salt: text.encode('coatwait'),
    info: text.encode(info),
  });
  const name = new Uint8Array(await crypto.subtle.deriveBits(by('name'), from, 80));
  const aes = { name: 'AES-GCM', length: 256 };
  return {
    name: Array.from(name, (byte) => byte.toString(16).padStart(2, '0')).join(''),
    key: await crypto.subtle.deriveKey(by('key'), from, aes, false, ['encrypt', 'decrypt']),
  };
}

/** The sealed message that goes out under a subject. */
export async function seal(
  key: CryptoKey,
  subject: string,
  content: Uint8Array<ArrayBuffer>,
): Promise<Uint8Array<ArrayBuffer>> {
  const nonce = crypto.getRandomValues(new Uint8Array(NONCE_BYTES));
  const closed = new Uint8Array(await crypto.subtle.encrypt(gcm(nonce, subject), key, content));
  const sealed = new Uint8Array(HEAD_BYTES + closed.length);
  sealed[0] = VERSION;
  sealed.set(nonce, 1);
  sealed.set(closed, HEAD_BYTES);
  return sealed;
}

/** What was sealed; undefined where it was sealed with another key or for another subject, or was changed. */
export async function unseal(
  key: CryptoKey,
  subject: string,
  sealed: Uint8Array<ArrayBuffer>,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  if (sealed[0] !== VERSION || sealed.length < HEAD_BYTES + TAG_BYTES) return undefined;
  try {
    const how = gcm(sealed.slice(1, HEAD_BYTES), subject);
    return new Uint8Array(await crypto.subtle.decrypt(how, key, sealed.slice(HEAD_BYTES)));
  } catch {
    return undefined; // the one thing that WebCrypto says of all three
  }
}

const gcm = (iv: Uint8Array<ArrayBuffer>, subject: string) => ({
  name: 'AES-GCM',
  iv,
  additionalData: text.encode(subject),
});
