/** CRC-32 as in ISO/IEC 8802-3, gzip and PNG (reflected polynomial 0xEDB88320): finds accidents, not ill will. */
const table = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c >>> 0;
});

/** Check sum of some bytes as eight hexadecimal digits. */
export const crc32 = (bytes: Uint8Array): string => {
  let c = 0xffffffff;
  for (const byte of bytes) c = (table[(c ^ byte) & 0xff] as number) ^ (c >>> 8);
  return ((c ^ 0xffffffff) >>> 0).toString(16).padStart(8, '0');
};
