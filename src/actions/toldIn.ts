/** Whatever it holds, with each whole text that has another beside it in `texts` told so; all else as it is. */
export const toldIn = <Whatever>(texts: Readonly<Record<string, string>>, held: Whatever): Whatever =>
  told(new Map(Object.entries(texts)), held) as Whatever;

const told = (texts: ReadonlyMap<string, string>, held: unknown): unknown => {
  if (typeof held === 'string') return texts.get(held) ?? held;
  if (Array.isArray(held)) return held.map((one) => told(texts, one));
  if (held === null || typeof held !== 'object') return held;
  return Object.fromEntries(Object.entries(held).map(([name, one]) => [name, told(texts, one)]));
};
