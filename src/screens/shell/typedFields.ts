/**
 * What a form holds, by the names of its fields; one that holds several under names of its own is taken apart, "text.note". Plain data:
 * what is left out of it (a chosen file) is not held.
 */
export type Flat = Readonly<Record<string, unknown>>;

const isPlain = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype;

export const flat = (values: Flat): Flat =>
  Object.fromEntries(
    Object.entries(values).flatMap(([name, value]) =>
      isPlain(value) ? Object.entries(value).map(([part, each]) => [`${name}.${part}`, each]) : [[name, value]],
    ),
  );

const said = (value: unknown): string =>
  JSON.stringify(value, (_, part: unknown) => (part instanceof Set || part instanceof Map ? [...part] : part)) ?? '';

/** One word for all that stands in a form, to see whether anything moved. */
export const wordOf = said;

/** The fields that no longer stand as they did. */
export const movedSince = (start: Flat, now: Flat): Flat =>
  Object.fromEntries(
    [...new Set([...Object.keys(start), ...Object.keys(now)])]
      .filter((name) => said(start[name]) !== said(now[name]))
      .map((name) => [name, now[name]]),
  );

/** Whether a held value may stand where another build of the app may ask for something else. */
const fits = (held: unknown, before: unknown): boolean =>
  held === undefined ||
  before === undefined ||
  held === null ||
  before === null ||
  (typeof held === typeof before &&
    (typeof held !== 'object' || Object.getPrototypeOf(held) === Object.getPrototypeOf(before)));

/** The values of a form with what was held put back; fields this form does not have, or has otherwise, are left. */
export const putBack = (values: Flat, held: Flat): Flat =>
  Object.fromEntries(
    Object.entries(values).map(([name, value]) => {
      const whole = Object.hasOwn(held, name) && fits(held[name], value) ? held[name] : value;
      const parts = Object.entries(held).flatMap(([key, part]) => {
        const within = key.startsWith(`${name}.`) ? key.slice(name.length + 1) : undefined;
        return within !== undefined && fits(part, isPlain(whole) ? whole[within] : undefined) ? [[within, part]] : [];
      });
      return [name, parts.length > 0 ? { ...(isPlain(whole) ? whole : {}), ...Object.fromEntries(parts) } : whole];
    }),
  );
