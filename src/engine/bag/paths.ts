/** Where everything lies in a bag, from its base folder (RFC 8493, section 2). */
export const bagPaths = {
  declaration: 'bagit.txt',
  info: 'bag-info.txt',
  manifest: 'manifest-sha256.txt',
  tagManifest: 'tagmanifest-sha256.txt',
  survey: 'data/survey.json',
  schema: 'data/survey.schema.json',
  linked: 'data/survey.jsonld',
  findings: 'data/findings.csv',
  report: 'data/report.html',
  readme: 'data/README.txt',
  photos: 'data/photos/',
} as const;

/** Endings of the pictures there are, by media type. */
const endings: Readonly<Record<string, string>> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
  'image/heic': 'heic',
  'image/avif': 'avif',
};

/** Where a photo lies: named by the hash of its bytes, so that its name says whether it is whole. */
export const photoPath = (sha256: string, mime: string): string =>
  `${bagPaths.photos}${sha256}.${endings[mime] ?? 'bin'}`;

const photoName = /^data\/photos\/([0-9a-f]{64})\.([a-z0-9]{1,5})$/;

/** The hash a path of a photo names, and its media type ('' where the ending is not known); undefined for any other path. */
export const photoAt = (path: string): { readonly sha256: string; readonly mime: string } | undefined => {
  const [, sha256, ending] = photoName.exec(path) ?? [];
  if (sha256 === undefined) return undefined;
  return { sha256, mime: Object.keys(endings).find((mime) => endings[mime] === ending) ?? '' };
};
