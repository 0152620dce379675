import type { Shop } from '../logbook/fold/fold';
import type { Photos } from '../logbook/storage/photos';
import { type HubLink, photoSubject } from './hub-link';
import type { KnownThere } from './known-there';
import { type ShopKey, seal, unseal } from './seal';

/*
 * A photo goes out in pieces, and its head last: where there is a head, the photo is whole. The head says its type and its length in
 * bytes and pieces.
 */
const PIECE_BYTES = 256 * 1024;
const MOST_BYTES = 50_000_000;

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

/** Sends every photo that is on this phone and not on the hub, one after another. */
export async function sendPhotos(
  ids: readonly string[],
  { link, shop, known, photos }: { link: HubLink; shop: ShopKey; known: KnownThere; photos: Photos },
  tell: (waiting: number) => void,
): Promise<void> {
  const waiting = ids.filter((id) => !known.hasToo(id));
  for (const [index, id] of waiting.entries()) {
    const picture = await photos.read(id);
    if (!picture) continue; // it is on another phone
    tell(waiting.length - index);
    const head = photoSubject(shop.name, id, 'head');
    if (!(await link.get(head))) await sendPhoto(picture, id, link, shop);
    await known.noteToo(id);
  }
  tell(0);
}

async function sendPhoto(picture: Blob, id: string, link: HubLink, shop: ShopKey): Promise<void> {
  const bytes = new Uint8Array(await picture.arrayBuffer());
  const put = async (piece: number | 'head', content: Uint8Array<ArrayBuffer>): Promise<void> => {
    const subject = photoSubject(shop.name, id, piece);
    await link.put(subject, await seal(shop.key, subject, content));
  };
  const pieces = Math.ceil(bytes.length / PIECE_BYTES);
  for (let n = 0; n < pieces; n++) await put(n, bytes.slice(n * PIECE_BYTES, (n + 1) * PIECE_BYTES));
  const head: Head = { type: picture.type, bytes: bytes.length, pieces };
  await put('head', new TextEncoder().encode(JSON.stringify(head)));
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
    const isWhole = typeof type === 'string' && typeof bytes === 'number' && bytes <= MOST_BYTES;
    return isWhole && pieces === Math.ceil(bytes / PIECE_BYTES) ? { type, bytes, pieces } : undefined;
  } catch {
    return undefined;
  }
}
