import type { Shop } from '../logbook/fold/fold';
import { MOST_PHOTO_BYTES } from '../logbook/picture/outline';
import type { Photos } from '../logbook/storage/photos';
import { type HubLink, photoSubject } from './hub-link';
import type { KnownThere } from './known-there';
import { type ShopKey, seal, unseal } from './seal';

/*
 * A photo goes out in pieces, and its head last: where there is a head, the photo is whole. The head says its type and its length in
 * bytes and pieces.
 */
const PIECE_BYTES = 256 * 1024;

interface Head {
  readonly type: string;
  readonly bytes: number;
  readonly pieces: number;
}

/** The photos that the logbook speaks of. */
export function photosOf({ entries }: Pick<Shop, 'entries'>): readonly string[] {
  return [...entries.values()].flatMap((entry) =>
    entry.kind === 'photographed' || entry.kind === 'card-photographed' ? entry.photo : [],
  );
}

/** Sends every photo that is on this phone and not on the hub, one after another, and tells how many wait. */
export async function sendPhotos(
  ids: readonly string[],
  { link, shop, known, photos }: { link: HubLink; shop: ShopKey; known: KnownThere; photos: Photos },
  tell: (waiting: number) => void,
): Promise<void> {
  const unknown = ids.filter((id) => !known.hasToo(id));
  if (unknown.length === 0) return tell(0);
  const here = await photos.ids(); // the others are on another phone
  const waiting = unknown.filter((id) => here.has(id));
  let left = waiting.length;
  for (const id of waiting) {
    tell(left);
    const picture = await photos.read(id);
    if (!picture || !(await isSent(picture, id, link, shop))) continue;
    await known.noteToo(id);
    left--;
  }
  tell(left);
}

/** Puts a photo on the hub, unless it is there; false where something that this shop did not seal lies in its place. */
async function isSent(picture: Blob, id: string, link: HubLink, shop: ShopKey): Promise<boolean> {
  const bytes = new Uint8Array(await picture.arrayBuffer());
  const put = async (piece: number | 'head', content: Uint8Array<ArrayBuffer>): Promise<boolean> => {
    const subject = photoSubject(shop.name, id, piece);
    const answer = await link.put(subject, await seal(shop.key, subject, content));
    return answer === 'stored' || (await unseal(shop.key, subject, answer)) !== undefined;
  };
  const there = await link.get(photoSubject(shop.name, id, 'head'));
  if (there) return (await unseal(shop.key, photoSubject(shop.name, id, 'head'), there)) !== undefined;
  const pieces = Math.ceil(bytes.length / PIECE_BYTES);
  for (let n = 0; n < pieces; n++)
    if (!(await put(n, bytes.slice(n * PIECE_BYTES, (n + 1) * PIECE_BYTES)))) return false;
  const head: Head = { type: picture.type, bytes: bytes.length, pieces };
  return put('head', new TextEncoder().encode(JSON.stringify(head)));
}

/** A photo from the hub; undefined where it is not there, or not whole, or not this shop's. */
export async function fetchPhoto(id: string, link: HubLink, shop: ShopKey): Promise<Blob | undefined> {
  const get = async (piece: number | 'head'): Promise<Uint8Array<ArrayBuffer> | undefined> => {
    const subject = photoSubject(shop.name, id, piece);
    const body = await link.get(subject);
    return body && unseal(shop.key, subject, body);
  };
  const head = headOf(await get('head'));
  if (!head) return undefined;
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  for (let n = 0; n < head.pieces; n++) {
    const piece = await get(n);
    if (!piece) return undefined;
    pieces.push(piece);
  }
  const picture = new Blob(pieces, { type: head.type });
  return picture.size === head.bytes ? picture : undefined;
}

function headOf(content: Uint8Array<ArrayBuffer> | undefined): Head | undefined {
  if (!content) return undefined;
  try {
    const { type, bytes, pieces } = JSON.parse(new TextDecoder().decode(content)) as Partial<Head>;
    const isWhole = typeof type === 'string' && typeof bytes === 'number' && bytes <= MOST_PHOTO_BYTES;
    return isWhole && pieces === Math.ceil(bytes / PIECE_BYTES) ? { type, bytes, pieces } : undefined;
  } catch {
    return undefined;
  }
}
