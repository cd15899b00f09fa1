/** Why a bag is not taken, with the parameters its sentence may use. The sentences live in src/words/en/reasonsOfBag.ts. */
export const bagReasons = {
  'bag: not a bag': [],
  /** bagit.txt is not the two lines RFC 8493 asks for. */
  'bag: declaration': [],
  'bag: version': ['found'],
  /** A line of a manifest that is no checksum and path. */
  'bag: manifest line': ['file', 'line'],
  'bag: listed twice': ['file', 'path'],
  /** A path a manifest of ours never has: it climbs, starts at a root, or names what is no file of a bag. */
  'bag: path': ['file', 'path'],
  'bag: info line': ['line'],
  /** A text of the bag that is no UTF-8, or starts with a byte-order mark. */
  'bag: text': ['file'],
} as const satisfies Record<string, readonly string[]>;

export type BagReason = keyof typeof bagReasons;

type ParamsOf<C extends BagReason> = { readonly [P in (typeof bagReasons)[C][number]]: string | number };

export const bagReason = <C extends BagReason>(code: C, params: ParamsOf<C>): { code: C; params: ParamsOf<C> } => ({
  code,
  params,
});
