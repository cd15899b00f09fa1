/**
 * Text as it goes into the record: NFC, and no half characters. Done once, at input; what is stored is never
 * normalised on reading. Keys without a value are left out, so that an emptied field is an absent one.
 */
export const asTyped = <T>(value: T): T => walk(value) as T;

const walk = (value: unknown): unknown => {
  if (typeof value === 'string') return wellFormed(value).normalize('NFC');
  if (Array.isArray(value)) return value.map(walk);
  if (value !== null && typeof value === 'object')
    return Object.fromEntries(
      Object.entries(value)
        .filter(([, v]) => v !== undefined)
        .map(([key, v]) => [key, walk(v)]),
    );
  return value;
};

const wellFormed = (text: string): string =>
  text.replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, '\ufffd');
