/** The content of a gzip file (RFC 1952). Throws where the bytes are none. */
export const unpacked = async (packed: ArrayBuffer): Promise<Uint8Array> => {
  const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
};
