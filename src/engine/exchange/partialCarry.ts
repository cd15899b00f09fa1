import { type Entry, erasedBy, erasureOf, isErasure } from '../record';
import { referencesOf } from './references';

export type LeftOut = 'names' | 'places' | 'access' | 'insert values' | 'money';

/** What leaves out which kind of thing. */
const kindsLeftOut: Readonly<Record<LeftOut, readonly string[]>> = {
  names: ['name'],
  // The air of a place may tell which place it is, and where its figures come from does.
  places: ['place', 'climate', 'keptWhere'],
  access: ['access', 'accessSheet', 'keptWhere'],
  'insert values': ['insertValue'],
  // What a bidder must not read: other bids, what there is to spend, who gave it.
  money: ['moneyRules', 'option', 'quote', 'fund', 'gift', 'bid', 'bidScore', 'yearPlan', 'decision', 'tripwireAnswer'],
};

/** Words for a paper, and notes of papers given out, stay behind with what their paper speaks of. */
const staysBehind = ({ kind, body }: Entry, without: readonly LeftOut[]): boolean =>
  (kind === 'paperText' || kind === 'paperIssued') &&
  Array.isArray(body.speaksOf) &&
  without.some((what) => (body.speaksOf as readonly unknown[]).includes(what));

export interface CarryOptions {
  /** Thing names; not given: all of the collection. */
  readonly sculptures?: readonly string[];
  readonly without?: readonly LeftOut[];
}

/** One line of what a file still holds: things of a kind, or one of two sorts of words inside them. */
export interface Held {
  /** A kind of thing, 'persons named in entries', 'notes' or 'sums of money in entries'. */
  readonly what: string;
  readonly count: number;
}

export interface PartialCarry {
  /** As they are here, every version of what is taken: a whole line of replacement, or none of it. */
  readonly entries: readonly Entry[];
  readonly holds: readonly Held[];
  /** Names of things that the entries speak of and the file leaves out. */
  readonly keptAtHome: readonly string[];
}

/** Fields in which a person may be named in entries that are not of the kind `name`. */
const namesPersons: Readonly<Record<string, readonly string[]>> = {
  classSet: ['setBy'],
  personCheck: ['closed'],
  treatment: ['by', 'people'],
  interpretation: ['by'],
  agreedColour: ['by'],
  weather: ['overridden'],
  methodSheet: ['setBy'],
  incident: ['told'],
  move: ['who'],
  groundsAgreement: ['who'],
  yearPlan: ['helpers', 'contacts'],
  yearVerdict: ['by'],
  quote: ['who'],
  gift: ['who'],
  decision: ['consulted', 'signed'],
  tripwireAnswer: ['by'],
  campaign: ['takenBy', 'warrantyWho'],
  bid: ['who', 'named'],
  bidCriteria: ['scorers', 'opened'],
  completeness: ['from'],
  approval: ['signed'],
  colourCard: ['signed'],
  layer: ['by'],
  hotDay: ['authorisedBy', 'watcher', 'watchKept', 'closed'],
  insertCare: ['limitBy', 'watcher'],
  insertReading: ['by'],
  insertAfter: ['by'],
  accessSheet: ['competent'],
  paperText: ['by'],
  paperIssued: ['by', 'to'],
  keptWhere: ['who'],
};

const namesAPerson = ({ kind, body }: Entry): boolean =>
  Object.hasOwn(namesPersons, kind) && (namesPersons[kind] ?? []).some((field) => body[field]);

const hasNote = ({ kind, body }: Entry): boolean =>
  Boolean(body.note) ||
  kind === 'interpretation' ||
  (kind === 'paperText' && Boolean(body.text)) ||
  (kind === 'personCheck' && Boolean(body.what));

/** Sums that are no thing of their own: what a treatment cost, a day of the lift. Whole entries go or stay, so these go. */
const holdsMoney = ({ kind, body }: Entry): boolean =>
  (kind === 'treatment' && body.cost !== undefined) || (kind === 'accessSheet' && body.dayCost !== undefined);

const count = (entries: readonly Entry[], of: (e: Entry) => boolean): number =>
  new Set(entries.filter(of).map((e) => e.thing)).size;

/** Everything a file would hold, to be read before it leaves. Counts are of things, earlier versions included. */
export const holdsOf = (entries: readonly Entry[]): readonly Held[] => {
  const kinds = [...new Set(entries.map((e) => e.kind))].sort();
  return [
    ...kinds.map((what) => ({ what, count: count(entries, (e) => e.kind === what) })),
    { what: 'persons named in entries', count: count(entries, namesAPerson) },
    { what: 'notes', count: count(entries, hasNote) },
  ].filter((held) => held.count > 0);
};

const isOfCollection = (entry: Entry): boolean => !entry.within.startsWith('sculpture/');

/**
 * The entries to carry when not all of them go: whole things with all their versions, so that no line of replacement is cut. With
 * some sculptures only, things of the collection go along where they are spoken of (the surveyor of a round), with the collection
 * itself and its weights. What was erased in the collection or in a work taken is said in every file, or an older one elsewhere would
 * bring it back. What is left out and spoken of is kept at home.
 */
export const partialCarry = (entries: readonly Entry[], options: CarryOptions = {}): PartialCarry => {
  const out = new Set((options.without ?? []).flatMap((what) => kindsLeftOut[what]));
  const allowed = entries.filter((e) => !out.has(e.kind) && !staysBehind(e, options.without ?? []));
  const taken = options.sculptures ? ofSculptures(allowed, new Set(options.sculptures)) : allowed;
  const things = new Set(taken.map((e) => e.thing));
  const mentioned = new Set(taken.flatMap((e) => referencesOf(e).map((r) => r.name)));
  const erased = erasedBy(taken);
  const sums = options.without?.includes('money') ? count(taken, holdsMoney) : 0;
  return {
    entries: taken,
    holds: [...holdsOf(taken), ...(sums > 0 ? [{ what: 'sums of money in entries', count: sums }] : [])],
    keptAtHome: [...mentioned].filter((name) => !things.has(name) && !erasureOf(erased, name)).sort(),
  };
};

const ofSculptures = (entries: readonly Entry[], sculptures: ReadonlySet<string>): Entry[] => {
  const own = entries.filter((e) => sculptures.has(e.within));
  const along = new Set(own.flatMap((e) => [e.by, ...referencesOf(e).map((r) => r.name)]));
  const goes = (e: Entry): boolean =>
    ['collection', 'scale', 'holdRules', 'climate'].includes(e.kind) ||
    isErasure(e) ||
    along.has(e.thing) ||
    ((e.kind === 'name' || e.kind === 'eyeCheck') && along.has(String(e.body.surveyor)));
  return entries.filter((e) => sculptures.has(e.within) || (isOfCollection(e) && goes(e)));
};
