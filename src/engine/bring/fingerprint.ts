/** Of a text: 32 hex figures, the same on every tablet, so that what two people bring in apart has one name. No secret and no proof. */
export const fingerprint = (text: string): string => [1, 2, 3, 4].map((seed) => part(text, seed)).join('');

/** FNV-1a over UTF-16 units with a last stirring; the seed stands before the text. */
const part = (text: string, seed: number): string => {
  let h = 0x811c9dc5 ^ Math.imul(seed, 0x9e3779b1);
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193);
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return ((h ^ (h >>> 16)) >>> 0).toString(16).padStart(8, '0');
};
