import { describe, expect, test } from 'vitest';
import { readZip, writeZip } from '../../../src/logbook/backup/zip';
import { crc32 } from '../../../src/logbook/crc32';

// Places of fields: PKWARE, APPNOTE.TXT 6.3.10, 4.3.7 (local header), 4.3.12 (directory), 4.3.16 (end).
const LOCAL_BYTES = 30;
const CENTRAL_BYTES = 46;
const END_BYTES = 22;
const content = new Blob([new Uint8Array([1, 2, 3])]);
const one = await writeZip([{ name: 'a', content }]);

/** The bytes of a ZIP with one file "a", changed at will; the view reads them, `at` is where its directory begins. */
async function changed(change: (view: DataView, at: number) => void, zip = one): Promise<Blob> {
  const bytes = await zip.arrayBuffer();
  const view = new DataView(bytes);
  change(view, view.getUint32(view.byteLength - 6, true));
  return new Blob([bytes]);
}
async function filesOf(zip: Blob): Promise<Readonly<Record<string, readonly number[] | undefined>> | string> {
  const read = await readZip(zip);
  if (!read.ok) return read.failure;
  const files = await Promise.all(
    [...read.value].map(async ([name, look]) => {
      const found = await look();
      return [name, found && [...new Uint8Array(await found.arrayBuffer())]] as const;
    }),
  );
  return Object.fromEntries(files);
}

describe('what is too large for a ZIP is refused before it is written', () => {
  const empty = { size: 0, arrayBuffer: async () => new ArrayBuffer(0) } as Blob;
  const ofSize = (size: number) => ({ ...empty, size }) as Blob;
  const overhead = LOCAL_BYTES + CENTRAL_BYTES + 2; // a name of one letter stands in both

  test('more than 65,534 files', async () => {
    const files = Array.from({ length: 0xfffe }, () => ({ name: 'a', content: empty }));
    await expect(writeZip(files)).resolves.toBeInstanceOf(Blob);
    await expect(writeZip([...files, { name: 'b', content: empty }])).rejects.toThrow(RangeError);
  });

  test('more than 4 GB with its directory', async () => {
    const most = 0xffff_ffff - overhead;
    await expect(writeZip([{ name: 'a', content: ofSize(most) }])).resolves.toBeInstanceOf(Blob);
    await expect(writeZip([{ name: 'a', content: ofSize(most + 1) }])).rejects.toThrow(RangeError);
  });
});

// APPNOTE.TXT 6.3.10, 4.3.16: on this disk, and in all.
test('the end of a ZIP counts its files twice, the lower byte first', async () => {
  const zip = await writeZip(['a', 'b'].map((name) => ({ name, content })));
  const end = [...new Uint8Array(await zip.slice(-END_BYTES).arrayBuffer())];
  expect(end.slice(4, 12)).toEqual([0, 0, 0, 0, 2, 0, 2, 0]);
});

// PKWARE, APPNOTE.TXT 6.3.10, 4.3.7 and 4.3.12; the flag of 4.4.4 (bit 11: names are UTF-8), the day of 4.4.6 (1 January 1980).
test('what is written of a file stands where the format says, the lower byte first', async () => {
  const zip = await writeZip(['a', 'bc'].map((name) => ({ name, content })));
  const view = new DataView(await zip.arrayBuffer());
  const size = content.size;
  const second = LOCAL_BYTES + 1 + size;
  const directory = second + LOCAL_BYTES + 2 + size;
  const sum = crc32(new Uint8Array(await content.arrayBuffer()));
  const described = (at: number) => [
    view.getUint16(at, true), // version needed
    view.getUint16(at + 2, true), // flags
    view.getUint16(at + 4, true), // method
    view.getUint16(at + 6, true), // time
    view.getUint16(at + 8, true), // day
    view.getUint32(at + 10, true), // checksum
    view.getUint32(at + 14, true), // size, packed
    view.getUint32(at + 18, true), // size
    view.getUint16(at + 22, true), // length of the name
    view.getUint16(at + 24, true), // length of what is extra
  ];
  const told = (name: string) => [10, 0x0800, 0, 0, 0x21, sum, size, size, name.length, 0];
  for (const [at, name] of [
    [0, 'a'],
    [second, 'bc'],
  ] as const) {
    expect(view.getUint32(at, true)).toBe(0x04034b50);
    expect(described(at + 4)).toEqual(told(name));
  }
  for (const [at, name, begins] of [
    [directory, 'a', 0],
    [directory + CENTRAL_BYTES + 1, 'bc', second],
  ] as const) {
    expect([view.getUint32(at, true), view.getUint16(at + 4, true)]).toEqual([0x02014b50, 10]);
    expect(described(at + 6)).toEqual(told(name));
    expect(view.getUint32(at + 42, true)).toBe(begins);
  }
  const end = view.byteLength - END_BYTES;
  expect([view.getUint32(end, true), view.getUint32(end + 12, true), view.getUint32(end + 16, true)]).toEqual(
    [0x06054b50, 2 * CENTRAL_BYTES + 3, directory],
  );
  expect([view.byteLength, zip.type]).toEqual([
    directory + 2 * CENTRAL_BYTES + 3 + END_BYTES,
    'application/zip',
  ]);
});

describe('a ZIP of another hand is read', () => {
  test('with a comment at its end, up to the longest', async () => {
    expect(await filesOf(new Blob([one, 'x'.repeat(0xffff)]))).toEqual({ a: [1, 2, 3] });
    expect(await filesOf(new Blob([one, 'x'.repeat(0x1_0000)]))).toBe('not-a-zip');
  });

  test('with more in its headers than a name', async () => {
    const bytes = new Uint8Array(await one.arrayBuffer());
    const directory = LOCAL_BYTES + 1 + 3;
    const local = bytes.slice(0, LOCAL_BYTES + 1);
    const central = bytes.slice(directory, directory + CENTRAL_BYTES + 1);
    const end = bytes.slice(-END_BYTES);
    new DataView(local.buffer).setUint16(28, 4, true); // extra field of the file
    const inDirectory = new DataView(central.buffer);
    inDirectory.setUint16(30, 2, true); // extra field in the directory
    inDirectory.setUint16(32, 5, true); // comment
    const ending = new DataView(end.buffer);
    ending.setUint32(12, CENTRAL_BYTES + 1 + 7, true);
    ending.setUint32(16, directory + 4, true);
    const zip = new Blob([local, 'XXXX', new Uint8Array([1, 2, 3]), central, 'YYcomme', end]);
    expect(await filesOf(zip)).toEqual({ a: [1, 2, 3] });
  });

  test('with its files right behind one another, and none', async () => {
    const two = await writeZip(['a', 'b'].map((name) => ({ name, content })));
    expect(await filesOf(two)).toEqual({ a: [1, 2, 3], b: [1, 2, 3] });
    expect(await filesOf(await writeZip([]))).toEqual({});
    expect(await filesOf(await writeZip([{ name: '', content }]))).toEqual({ '': [1, 2, 3] });
  });
});

describe('a ZIP is none', () => {
  test.each<{ why: string; change: (view: DataView, at: number) => void }>([
    {
      why: 'more files are counted than named',
      change: (v) => v.setUint16(v.byteLength - END_BYTES + 10, 2, true),
    },
    { why: 'its directory is no directory', change: (v, at) => v.setUint32(at, 0, true) },
    { why: 'a name runs out of the directory', change: (v, at) => v.setUint16(at + 28, 2, true) },
    {
      why: 'its directory runs out of the file',
      change: (v) => v.setUint32(v.byteLength - END_BYTES + 12, 99_999, true),
    },
    { why: 'its directory begins too late', change: (v, at) => v.setUint32(v.byteLength - 6, at + 23, true) },
    { why: 'it has no end', change: (v) => v.setUint32(v.byteLength - END_BYTES, 0, true) },
    {
      why: 'more files are counted than a ZIP has',
      change: (v) => v.setUint16(v.byteLength - END_BYTES + 10, 0xffff, true),
    },
  ])('where $why', async ({ change }) => {
    expect(await filesOf(await changed(change))).toBe('not-a-zip');
  });

  test('where nothing of it is there', async () => {
    expect(await filesOf(new Blob([]))).toBe('not-a-zip');
    expect(await filesOf(one.slice(0, one.size - 1))).toBe('not-a-zip');
  });
});

test.each<{ why: string; change: (view: DataView, at: number) => void }>([
  { why: 'runs out of the ZIP', change: (v, at) => v.setUint32(at + 24, 500, true) },
  { why: 'does not begin where it is said to', change: (v, at) => v.setUint32(at + 42, 1, true) },
  { why: 'is said to begin at the end', change: (v, at) => v.setUint32(at + 42, v.byteLength - 4, true) },
  {
    why: 'is said to begin with the last byte',
    change: (v, at) => v.setUint32(at + 42, v.byteLength - 1, true),
  },
])('a file that $why is not there', async ({ change }) => {
  expect(await filesOf(await changed(change))).toEqual({ a: undefined });
});

test('a file that ends with the last byte of the ZIP is there', async () => {
  // To its very end, the directory and all: what is in it is none of the reader's business.
  const whole = await changed((v, at) => v.setUint32(at + 24, v.byteLength - LOCAL_BYTES - 1, true));
  const files = await filesOf(whole);
  expect(typeof files === 'object' && files['a']?.slice(0, 3)).toEqual([1, 2, 3]);
});
