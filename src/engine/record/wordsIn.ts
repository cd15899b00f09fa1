/**
 * Whole words in texts of any depth, in whatever case and whatever white space between them: what is looked for when a person's name
 * is to go. Texts are compared in Unicode normal form C, so that one written elsewhere is found too.
 */
const pattern = (words: string): RegExp => {
  const parts = words.normalize('NFC').trim().split(/\s+/).map(escaped);
  return new RegExp(`(?<![\\p{L}\\p{N}])${parts.join('\\s+')}(?![\\p{L}\\p{N}])`, 'giu');
};

/** The last words looked for: a search goes through every entry with the same ones. */
let last: { readonly words: string; readonly found: RegExp } | undefined;

const patternOf = (words: string): RegExp => {
  if (last?.words !== words) last = { words, found: pattern(words) };
  last.found.lastIndex = 0;
  return last.found;
};

const escaped = (word: string): string => word.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');

/** Which texts may be looked into, by the path of field names to them. */
export type Where = (path: readonly string[]) => boolean;

const everywhere: Where = () => true;

/** The value with the words put otherwise; the very same value where they stand nowhere in it. */
export const withWords = (value: unknown, words: string, put: string, where: Where = everywhere): unknown => {
  const found = patternOf(words);
  const inside = (part: unknown, path: readonly string[]): unknown => {
    if (typeof part === 'string') {
      if (!where(path)) return part;
      const text = part.normalize('NFC');
      const said = text.replace(found, () => put);
      return said === text ? part : said;
    }
    if (Array.isArray(part)) {
      const parts = part.map((each) => inside(each, path));
      return parts.every((each, i) => each === part[i]) ? part : parts;
    }
    if (typeof part !== 'object' || part === null || Object.getPrototypeOf(part) !== Object.prototype) return part;
    const fields = Object.entries(part).map(([name, each]) => [name, each, inside(each, [...path, name])] as const);
    return fields.every(([, was, is]) => was === is)
      ? part
      : Object.fromEntries(fields.map(([name, , is]) => [name, is]));
  };
  return inside(value, []);
};

/** The same with several spellings, the longest first: a short one would else leave the rest of a long one standing. */
export const withAnyWords = (
  value: unknown,
  spellings: readonly string[],
  put: string,
  where: Where = everywhere,
): unknown =>
  [...spellings].sort((a, b) => b.length - a.length).reduce((said, words) => withWords(said, words, put, where), value);

/** True where the words stand in any text of the value. */
export const holdsWords = (value: unknown, words: string, where: Where = everywhere): boolean => {
  const found = patternOf(words);
  const inside = (part: unknown, path: readonly string[]): boolean => {
    if (typeof part === 'string') return where(path) && part.normalize('NFC').search(found) >= 0;
    if (Array.isArray(part)) return part.some((each) => inside(each, path));
    if (typeof part !== 'object' || part === null) return false;
    return Object.entries(part).some(([name, each]) => inside(each, [...path, name]));
  };
  return inside(value, []);
};
