import { type Entry, holdsWords, inOwnWords, isErasure, isKnown, nameOf } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';

/** A thing in whose entries, the earlier ones too, the name of a surveyor is written out. */
export interface Naming {
  readonly thing: string;
  readonly kind: string;
  /** The sculpture, or the collection. */
  readonly within: string;
  /** The first text that holds it, cut to 200 characters. */
  readonly text: string;
  /** How many of its entries hold it. */
  readonly entries: number;
  /** False for a thing this version does not know: it can be found and not put otherwise. */
  readonly canGo: boolean;
}

export interface NamesFound {
  /** Every spelling the name was ever kept in, the present one first. */
  readonly words: readonly string[];
  /** Where else it stands, whole words in whatever case; other persons' own names are not looked into. */
  readonly elsewhere: readonly Naming[];
}

/** The same, for a screen. */
export const namesFound = (desk: Desk, surveyor: string): Question<NamesFound> =>
  ask(
    desk,
    `names found ${surveyor}`,
    () => desk.store.changes(),
    () => whatNames(desk, surveyor),
  );

/** Entries looked through before the page may do something else: some milliseconds' work. */
const slice = 500;

/** All that names a surveyor: the name kept apart, and texts that hold the same words. */
export const whatNames = async (desk: Desk, surveyor: string): Promise<NamesFound> => {
  const words = await spellingsOf(desk, surveyor);
  if (words.length === 0) return { words, elsewhere: [] };
  const holding = new Map<string, Entry[]>();
  for (const [i, entry] of (await desk.store.allEntries()).entries()) {
    if (i % slice === slice - 1) await new Promise((go) => setTimeout(go));
    if (entry.kind === 'name' || isErasure(entry) || !words.some((each) => holdsWords(entry.body, each, inOwnWords)))
      continue;
    holding.set(entry.thing, [...(holding.get(entry.thing) ?? []), entry]);
  }
  return { words, elsewhere: [...holding.values()].map((entries) => naming(entries, words)) };
};

/** Spellings the name was kept in, the latest first; a name taken away long ago is still in the earlier entries. */
export const spellingsOf = async (desk: Desk, surveyor: string): Promise<string[]> => {
  const entries = await desk.store.entriesOf(nameOf.personName(surveyor));
  const lead = (await desk.store.current(nameOf.personName(surveyor)))?.lead;
  const names = [lead, ...entries].flatMap((entry) => (typeof entry?.body.name === 'string' ? [entry.body.name] : []));
  return [...new Set(names.map((name) => name.trim()).filter((name) => name !== ''))];
};

const naming = (entries: readonly Entry[], words: readonly string[]): Naming => {
  const [{ thing, kind, within, body }] = entries as [Entry, ...Entry[]];
  const text = words.flatMap((each) => textWith(body, each) ?? [])[0] ?? '';
  return { thing, kind, within, text: text.slice(0, 200), entries: entries.length, canGo: entries.every(isKnown) };
};

const textWith = (value: unknown, words: string): string | undefined => {
  if (typeof value === 'string') return holdsWords(value, words) ? value : undefined;
  if (typeof value !== 'object' || value === null) return undefined;
  for (const [name, part] of Object.entries(value)) {
    if (typeof part === 'string' && !inOwnWords([name])) continue;
    const found = textWith(part, words);
    if (found !== undefined) return found;
  }
  return undefined;
};
