import { type Entry, nameOf, type Origin } from '../record';

const words = (body: Entry['body'], ...fields: readonly string[]): string[] => fields.map((f) => String(body[f]));

/** What a paper is of, as it stands in its address: a thing, a year, or a thing in a year. */
const aboutOfPaper = ({ about, year }: Entry['body']): string =>
  [about, year].filter((part) => part !== undefined).join(' ');

/** For things whose name follows from what they say: the name that fits the body. */
const follows: Readonly<Record<string, (body: Entry['body']) => string>> = {
  visit: (b) => nameOf.visit(...(words(b, 'round', 'zone') as [string, string])),
  finding: (b) => nameOf.finding(...(words(b, 'round', 'zone', 'kind', 'origin') as [string, string, string, Origin])),
  rerating: (b) => nameOf.rerating(...(words(b, 'round', 'zone') as [string, string])),
  classSet: (b) => nameOf.classSet(...(words(b, 'round', 'about') as [string, string])),
  name: (b) => nameOf.personName(String(b.surveyor)),
  place: (b) => nameOf.place(String(b.sculpture)),
  access: (b) => nameOf.access(String(b.sculpture)),
  insertValue: (b) => nameOf.insertValue(String(b.insert)),
  methodSheet: (b) => nameOf.methodSheet(String(b.sculpture)),
  accessSheet: (b) => nameOf.accessSheet(String(b.sculpture)),
  yearVerdict: (b) => nameOf.yearVerdict(String(b.sculpture), Number(b.year)),
  insertCare: (b) => nameOf.insertCare(String(b.insert)),
  insertAfter: (b) => nameOf.insertAfter(...(words(b, 'hotDay', 'insert') as [string, string])),
  quantities: (b) => nameOf.quantities(String(b.campaign)),
  dueAnswered: (b) => nameOf.dueAnswered(String(b.key)),
  tripwireAnswer: (b) => nameOf.tripwireAnswer(...(words(b, 'decision', 'tripwire', 'on') as [string, string, string])),
  listTicks: (b) => nameOf.listTicks(...(words(b, 'list', 'of') as [string, string])),
  paperText: (b) => nameOf.paperText(String(b.paper), String(b.part), aboutOfPaper(b)),
  photo: (b) => nameOf.photo(String(b.sha256)),
};

/** The name an entry of a known kind has to have: a whole name, or the beginning it must have ("zone/"). */
export const fittingName = (entry: Entry): string =>
  Object.hasOwn(follows, entry.kind) ? (follows[entry.kind]?.(entry.body) ?? '') : `${entry.kind}/`;

/** True where the name of the thing is one its kind and its body allow. */
export const nameFits = (entry: Entry): boolean => {
  const fitting = fittingName(entry);
  return fitting.endsWith('/')
    ? entry.thing.startsWith(fitting) && entry.thing.length > fitting.length
    : entry.thing === fitting;
};

/** What an entry has to be within: the sculpture it speaks of, itself for a sculpture; undefined where the body does not say. */
export const fittingWithin = (entry: Entry): string | undefined => {
  if (entry.kind === 'sculpture') return entry.thing;
  return typeof entry.body.sculpture === 'string' ? entry.body.sculpture : undefined;
};
