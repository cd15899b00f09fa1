/**
 * In which language the app speaks, and how it writes days, numbers and units. Set once, before the first screen is loaded: words are
 * taken up as the files that hold them are read, so a change of language begins anew with the page.
 */
export interface Tongue {
  readonly language: 'en' | 'de';
  /** BCP 47, for days and numbers: "en-GB", "en-US", "de-DE". */
  readonly locale: string;
  readonly units: 'metric' | 'us';
}

/** Words of a language, by the file and the name under which the English ones stand. */
export type WordsOfLanguage = Readonly<Record<string, Readonly<Record<string, unknown>>>>;

/** As it is chosen on the device: language and way of writing in one. */
export const tongues = ['en-GB', 'en-US', 'de-DE'] as const;
export type TongueChoice = (typeof tongues)[number];

let tongue: Tongue = { language: 'en', locale: 'en-GB', units: 'metric' };
let others: WordsOfLanguage | undefined;

/** Before any file with words is read. `words` are left out for English. */
export const speak = (now: Tongue, words?: WordsOfLanguage): void => {
  tongue = now;
  others = words;
};

export const tongueNow = (): Tongue => tongue;

/** From what the device keeps, which may be anything. */
export const tongueOf = (choice: unknown, units: unknown): Tongue => {
  const locale = tongues.find((one) => one === choice) ?? 'en-GB';
  return { language: locale === 'de-DE' ? 'de' : 'en', locale, units: units === 'us' ? 'us' : 'metric' };
};

/** The words of one name, in the language spoken; English where there are no others. */
export const spoken = <T>(file: string, name: string, english: T): T =>
  (others?.[file]?.[name] as T | undefined) ?? english;

/** What another language must hold for these English words: the same keys, functions of the same parameters. */
export type Same<T> = T extends string
  ? string
  : T extends number
    ? number
    : T extends boolean
      ? boolean
      : T extends (...given: infer A) => infer R
        ? (...given: A) => Same<R>
        : { readonly [K in keyof T]: Same<T[K]> };
