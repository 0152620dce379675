const POLYNOMIAL = 0xedb88320; // reflected, as ZIP and PNG use it
const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let sum = byte;
  for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? POLYNOMIAL ^ (sum >>> 1) : sum >>> 1;
  return sum;
});

/** The CRC-32 of these bytes, as ZIP files carry it. Source: ITU-T V.42, 8.1.1.6.2; PNG (ISO/IEC 15948), annex D. */
export function crc32(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) sum = (TABLE[(sum ^ byte) & 0xff] as number) ^ (sum >>> 8);
  return (sum ^ 0xffffffff) >>> 0;
}
