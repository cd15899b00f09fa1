import type { PaperSource } from '../../engine/reckoning';
import type { BodyOf } from '../../engine/record';
import type { PaperSort } from '../../papers/layout';

/** A paper by its sort and what it was made of. */
export interface OfPaper {
  readonly sort: PaperSort;
  readonly about: string;
  /** The work it belongs to, where it belongs to one. */
  readonly sculpture: string | undefined;
}

/** A paper may be of one year of a work: "sculpture/… 2026". */
const withYear = /^(?<thing>.+) (?<year>\d{4})$/;
export const thingOf = (about: string): string => withYear.exec(about)?.groups?.thing ?? about;
export const yearOf = (about: string): string | undefined => withYear.exec(about)?.groups?.year;

/** The work that the thing a paper is about lies in. */
export const sculptureOf = ({ works }: PaperSource, about: string): string | undefined => {
  const asked = thingOf(about);
  return works.find(
    ({ record, within }) => record.sculpture.thing === asked || within.some(({ thing }) => thing === asked),
  )?.record.sculpture.thing;
};

type Shared = Pick<BodyOf<'paperText'>, 'sculpture' | 'paper' | 'about' | 'year' | 'speaksOf'>;

/** How the record names a paper. */
export const ofPaper = ({ sort, about, sculpture }: OfPaper): Shared => ({
  sculpture,
  paper: sort.id,
  ...(/^\d{4}$/.test(about)
    ? { year: Number(about) }
    : { about: thingOf(about), ...(yearOf(about) ? { year: Number(yearOf(about)) } : {}) }),
  speaksOf: sort.speaksOf ? [...sort.speaksOf] : undefined,
});

/** The address part of a paper, from how the record names it. */
export const aboutOf = ({
  about,
  year,
}: {
  readonly about?: string | undefined;
  readonly year?: number | undefined;
}): string => [about, year].filter((part) => part !== undefined).join(' ');
