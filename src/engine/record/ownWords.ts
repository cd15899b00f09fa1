/**
 * Fields in which a person writes in words of her own, in whatever kind of thing. All other texts are codes, names of things, days or
 * numbers, and keep their meaning only letter by letter.
 */
const fields: ReadonlySet<string> = new Set([
  'aim',
  'by',
  'calibration',
  'dimensions',
  'find',
  'from',
  'instrument',
  'kept',
  'maker',
  'mark',
  'material',
  'materials',
  'name',
  'note',
  'number',
  'position',
  'product',
  'role',
  'setBy',
  'side',
  'source',
  'statement',
  'text',
  'title',
  'what',
]);

/** Whether the text at this path of field names is somebody's own words. */
export const inOwnWords = (path: readonly string[]): boolean =>
  fields.has(path[path.length - 1] ?? '') && !path.includes('target');
