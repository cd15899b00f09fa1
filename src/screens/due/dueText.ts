import type { DueThings } from '../../actions';
import type { Due, DueStanding } from '../../engine/watch';
import { list, type NameOfThing, sayReason, w } from '../../words';
import { pathTo } from '../shell';

const words = w.due;

/** "Zones A, B and D"; nothing where it is about the whole. */
export const zonesText = ({ zones: named }: Due, zones: DueThings['zones']): string | undefined => {
  const letters = named.flatMap((zone) => zones.get(zone)?.letter ?? []);
  const [only] = letters;
  if (only === undefined) return undefined;
  return letters.length === 1 ? words.zone(only) : words.zones(list(letters));
};

/** What it is, in a word or as the person wrote it. */
export const dueTitle = (due: Due): string => {
  const [first] = due.reasons;
  return due.sort === 'task' && first ? String(first.params.what) : words.sort[due.sort];
};

/** Why, as sentences; a task says it all in its title. */
export const dueSentences = ({ sort, reasons }: Due, names: NameOfThing): readonly string[] => [
  ...new Set((sort === 'task' ? reasons.slice(1) : reasons).map((reason) => sayReason(reason, names))),
];

/** What went is told by the first of its reasons; all of them stand with the decision. */
const shown = 2;

/** The same for a line of a list: why a look tells most on its day is said where it is answered, and where it is made. */
export const dueInShort = (due: Due, names: NameOfThing): string => {
  const { sort, reasons } = due;
  const long = sort === 'look' || sort === 'wax';
  const kept = long ? reasons.filter(({ code }) => code.startsWith('due: ')) : reasons.slice(0, shown);
  return dueSentences({ ...due, reasons: kept }, names).join(' ');
};

/** Where it is done; undefined where it is done here. */
export const placeOf = ({ sort, about, sculpture }: DueStanding): string | undefined => {
  const isOf = (kind: string): boolean => about.startsWith(`${kind}/`);
  switch (sort) {
    case 'danger':
      return isOf('incident') ? pathTo.incidents() : pathTo.nextSteps();
    case 'incident':
      return pathTo.incidents();
    case 'hot day':
      return pathTo.hotDay(about);
    case 'tripwire':
    case 'review':
      return pathTo.decisions(sculpture ?? undefined);
    case 'warranty':
    case 'round':
      return sculpture ? pathTo.startRound(sculpture) : undefined;
    case 'watch':
    case 'look':
      return sculpture ? pathTo.look(sculpture) : undefined;
    case 'wax':
      return sculpture ? pathTo.careDay(sculpture) : undefined;
    case 'quote':
      if (!sculpture) return pathTo.money();
      return isOf('bid') ? pathTo.campaigns(sculpture) : pathTo.options(sculpture);
    case 'gift':
      return pathTo.funds();
    case 'loan':
      return pathTo.moves();
    case 'agreement':
      return pathTo.grounds();
    case 'product':
      return pathTo.products();
    case 'lift':
      return pathTo.year();
    default:
      return undefined;
  }
};
