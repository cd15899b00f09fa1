/** A short word for a value, the same for equal values in whatever order their fields stand: FNV-1a, twice, over its text. */
export const wordOf = (value: unknown): string => {
  const text = JSON.stringify(value, sorted) ?? '';
  let a = 0x811c9dc5;
  let b = 0x050c5d1f;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    a = Math.imul(a ^ code, 0x01000193);
    b = Math.imul(b ^ code, 0x01000193);
  }
  return (a >>> 0).toString(36) + (b >>> 0).toString(36).padStart(7, '0');
};

const sorted = (_: string, value: unknown): unknown => {
  if (typeof value === 'number' && !Number.isFinite(value)) return String(value);
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
};
