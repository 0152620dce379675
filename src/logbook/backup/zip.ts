import { fail, type Result, succeed } from '../../result';
import { crc32 } from '../crc32';

/*
 * A ZIP file (PKWARE, APPNOTE.TXT 6.3.10) of files stored as they are, without compression: any computer opens it, photos would not
 * get smaller, and a file that claims to be small and unpacks to something huge cannot be written in it.
 */
const LOCAL = 0x04034b50; // 4.3.7
const CENTRAL = 0x02014b50; // 4.3.12
const END = 0x06054b50; // 4.3.16
const LOCAL_BYTES = 30;
const CENTRAL_BYTES = 46;
const END_BYTES = 22;
const LONGEST_COMMENT = 0xffff;
const NEEDS_VERSION = 10;
const UTF_8_NAMES = 0x0800;
const MOST_BYTES = 0xffff_ffff;
const MOST_FILES = 0xfffe;
/** Names and places of all files: this is read at once, the files are not. */
const MOST_DIRECTORY_BYTES = 20_000_000;

/** A file in a ZIP; names are relative, with slashes. */
export interface ZipFile {
  readonly name: string;
  readonly content: Blob;
}

/** Why a ZIP cannot be read: it is none or was cut short, or another program has packed it. */
export type ZipFailure = 'not-a-zip' | 'packed';

interface Placed {
  readonly name: Uint8Array<ArrayBuffer>;
  readonly crc: number;
  readonly bytes: number;
  readonly offset: number;
}

/** One ZIP of these files. Their contents are read one at a time, however many there are. */
export async function writeZip(files: readonly ZipFile[]): Promise<Blob> {
  const parts: BlobPart[] = [];
  const placed: Placed[] = [];
  let offset = 0;
  for (const { name, content } of files) {
    const crc = crc32(new Uint8Array(await content.arrayBuffer()));
    const place = { name: new TextEncoder().encode(name), crc, bytes: content.size, offset };
    parts.push(localHeader(place), place.name, content);
    placed.push(place);
    offset += LOCAL_BYTES + place.name.length + content.size;
  }
  const directory = placed.flatMap((place) => [centralHeader(place), place.name]);
  const size = directory.reduce((sum, part) => sum + part.length, 0);
  if (offset + size > MOST_BYTES || files.length > MOST_FILES) throw new RangeError('too large for a ZIP');
  return new Blob([...parts, ...directory, endOf(files.length, size, offset)], { type: 'application/zip' });
}

/** What both headers say of a file: flags, method 0 (stored), date (1980, as none is given), checksum, sizes, length of the name. */
function describe(view: DataView, at: number, { name, crc, bytes }: Placed): void {
  view.setUint16(at, NEEDS_VERSION, true);
  view.setUint16(at + 2, UTF_8_NAMES, true);
  view.setUint16(at + 8, (1 << 5) | 1, true);
  view.setUint32(at + 10, crc, true);
  view.setUint32(at + 14, bytes, true);
  view.setUint32(at + 18, bytes, true);
  view.setUint16(at + 22, name.length, true);
}

function localHeader(place: Placed): Uint8Array<ArrayBuffer> {
  const view = new DataView(new ArrayBuffer(LOCAL_BYTES));
  view.setUint32(0, LOCAL, true);
  describe(view, 4, place);
  return new Uint8Array(view.buffer);
}

function centralHeader(place: Placed): Uint8Array<ArrayBuffer> {
  const view = new DataView(new ArrayBuffer(CENTRAL_BYTES));
  view.setUint32(0, CENTRAL, true);
  view.setUint16(4, NEEDS_VERSION, true);
  describe(view, 6, place);
  view.setUint32(42, place.offset, true);
  return new Uint8Array(view.buffer);
}

function endOf(files: number, size: number, offset: number): Uint8Array<ArrayBuffer> {
  const view = new DataView(new ArrayBuffer(END_BYTES));
  view.setUint32(0, END, true);
  view.setUint16(8, files, true);
  view.setUint16(10, files, true);
  view.setUint32(12, size, true);
  view.setUint32(16, offset, true);
  return new Uint8Array(view.buffer);
}

/** The files of a ZIP by name; each is looked up when it is asked for, and undefined where it is not where the ZIP says. */
export type ZipFiles = ReadonlyMap<string, () => Promise<Blob | undefined>>;

/** The files of a ZIP by name, as slices of it: nothing is unpacked, and no two may share a byte. */
export async function readZip(zip: Blob): Promise<Result<ZipFiles, ZipFailure>> {
  const end = await findEnd(zip);
  if (!end || end.offset + end.size > zip.size || end.size > MOST_DIRECTORY_BYTES || end.files > MOST_FILES)
    return fail('not-a-zip');
  const directory = await view(zip, end.offset, end.size);
  const files = new Map<string, () => Promise<Blob | undefined>>();
  const spans: Span[] = [];
  let at = 0;
  for (let n = 0; n < end.files; n++) {
    if (at + CENTRAL_BYTES > directory.byteLength || directory.getUint32(at, true) !== CENTRAL)
      return fail('not-a-zip');
    if (directory.getUint16(at + 10, true) !== 0) return fail('packed');
    const [name = 0, extra = 0, comment = 0] = [28, 30, 32].map((field) =>
      directory.getUint16(at + field, true),
    );
    const bytes = directory.getUint32(at + 24, true);
    const offset = directory.getUint32(at + 42, true);
    const next = at + CENTRAL_BYTES + name + extra + comment;
    if (next > directory.byteLength) return fail('not-a-zip');
    const from = at + CENTRAL_BYTES;
    const called = new TextDecoder().decode(directory.buffer.slice(from, from + name));
    files.set(called, () => contentAt(zip, offset, bytes));
    spans.push({ from: offset, to: offset + LOCAL_BYTES + name + bytes });
    at = next;
  }
  return overlap(spans) ? fail('not-a-zip') : succeed(files);
}

interface Span {
  readonly from: number;
  readonly to: number;
}

/** Whether two files share bytes: so a small file would become a large one. */
function overlap(spans: readonly Span[]): boolean {
  const sorted = spans.toSorted((one, other) => one.from - other.from);
  return sorted.some(({ from }, index) => from < (sorted[index - 1]?.to ?? 0));
}

async function findEnd(zip: Blob) {
  const from = Math.max(0, zip.size - END_BYTES - LONGEST_COMMENT);
  const tail = await view(zip, from, zip.size - from);
  for (let at = tail.byteLength - END_BYTES; at >= 0; at--)
    if (tail.getUint32(at, true) === END)
      return {
        files: tail.getUint16(at + 10, true),
        size: tail.getUint32(at + 12, true),
        offset: tail.getUint32(at + 16, true),
      };
  return undefined;
}

async function contentAt(zip: Blob, offset: number, bytes: number): Promise<Blob | undefined> {
  const header = await view(zip, offset, LOCAL_BYTES);
  if (header.byteLength < LOCAL_BYTES || header.getUint32(0, true) !== LOCAL) return undefined;
  const from = offset + LOCAL_BYTES + header.getUint16(26, true) + header.getUint16(28, true);
  return from + bytes <= zip.size ? zip.slice(from, from + bytes) : undefined;
}

const view = async (zip: Blob, from: number, bytes: number): Promise<DataView<ArrayBuffer>> =>
  new DataView(await zip.slice(from, from + bytes).arrayBuffer());
