/** A short word for a value made by this app: FNV-1a, twice, over its text. Two equal values of one origin have the same. */
export const wordOf = (value: unknown): string => {
  const text = JSON.stringify(value) ?? '';
  let a = 0x811c9dc5;
  let b = 0x050c5d1f;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    a = Math.imul(a ^ code, 0x01000193);
    b = Math.imul(b ^ code, 0x01000193);
  }
  return (a >>> 0).toString(36) + (b >>> 0).toString(36).padStart(7, '0');
};
