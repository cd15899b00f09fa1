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
  /** The zip has no end, or something after it. */
  'bag: cut off': [],
  /** What a zip says of a file in one place it denies in another, or two files share bytes; '' where it is no one file. */
  'bag: zip untrue': ['path'],
  'bag: zip in parts': [],
  'bag: encrypted': ['path'],
  /** Packed in a way no bag of ours is. */
  'bag: packed otherwise': ['path'],
  /** It does not unpack to what it says it does. */
  'bag: not unpacked': ['path'],
  'bag: too many files': ['count', 'most'],
  'bag: file too large': ['path', 'megabytes', 'most'],
  'bag: too large': ['gigabytes', 'most'],
  /** A small file that says it unpacks to a huge one. */
  'bag: swells': ['path', 'times'],
  /** A name no file of a bag of ours has. */
  'bag: name': ['path'],
  'bag: name twice': ['path'],
  'bag: no declaration': [],
  /** A manifest of other check sums than SHA-256. */
  'bag: other manifest': ['path'],
  /** It leaves files to be fetched from elsewhere. */
  'bag: fetch': [],
  'bag: no manifest': [],
  'bag: no survey': [],
  /** Listed and not there. */
  'bag: file missing': ['file', 'path'],
  /** There and not listed. */
  'bag: file not listed': ['path'],
  'bag: file altered': ['path'],
  /** Called a photo and no picture this app knows. */
  'bag: no picture': ['path'],
  /** A photo listed under another hash than its name says. */
  'bag: photo name': ['path'],
  /** The count of all bytes and files in bag-info.txt is another. */
  'bag: count differs': ['bytes', 'files'],
  'bag: more faults': ['count'],
} as const satisfies Record<string, readonly string[]>;

export type BagReason = keyof typeof bagReasons;

type ParamsOf<C extends BagReason> = { readonly [P in (typeof bagReasons)[C][number]]: string | number };

export const bagReason = <C extends BagReason>(code: C, params: ParamsOf<C>): { code: C; params: ParamsOf<C> } => ({
  code,
  params,
});
