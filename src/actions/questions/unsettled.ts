import { type Entry, type PairOfRounds, roundsThatMayBeOne as pairsIn } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { doublesHere } from '../doublesHere';
import { thingsOfKind } from '../theThing';
import { ask } from './question';
import { recordOf } from './records';

/** A thing on which people spoke without seeing each other. */
export interface Unsettled {
  readonly thing: string;
  readonly kind: string;
  readonly within: string;
  /** The versions, the one that leads for now first. */
  readonly versions: readonly Entry[];
  /** The last entry all versions go back to, where there is one. */
  readonly base?: Entry;
}

export const unsettled = (desk: Desk): Question<readonly Unsettled[]> =>
  ask(
    desk,
    'unsettled',
    () => desk.store.changes(),
    async () => {
      const currents = await desk.store.unsettled();
      const apart = await Promise.all(
        currents.map(async ({ thing, kind, within, heads }) => {
          const entries = await desk.store.entriesOf(thing);
          const byId = new Map(entries.map((entry) => [entry.id, entry]));
          const versions = heads.flatMap((id) => byId.get(id) ?? []);
          const base = commonBase(versions, byId);
          return { thing, kind, within, versions, ...(base ? { base } : {}) };
        }),
      );
      const doubles = await doublesHere(desk);
      const named = new Set(doubles.map(({ double }) => double.thing));
      return [
        ...apart.filter(({ thing }) => !named.has(thing)),
        ...doubles.map(({ double: { thing, current }, versions }) => {
          const { kind, within } = current;
          return { thing, kind, within, versions };
        }),
      ];
    },
  );

/** Nearest common ancestor by replacement: the first, from the lead back, that lies under every version. */
const commonBase = (versions: readonly Entry[], byId: ReadonlyMap<string, Entry>): Entry | undefined => {
  const [first, ...others] = versions.map((version) => underneath(version, byId));
  return first?.find((entry) => others.every((other) => other.includes(entry)));
};

const underneath = (version: Entry, byId: ReadonlyMap<string, Entry>): Entry[] => {
  const found = new Set<Entry>([version]);
  for (const entry of found)
    for (const id of entry.replaces) {
      const below = byId.get(id);
      if (below) found.add(below);
    }
  return [...found];
};

export interface RoundsThatMayBeOne extends PairOfRounds {
  readonly sculpture: string;
}

/** Rounds begun apart on two devices around the same day, which nobody has yet said to be one or two. */
export const roundsThatMayBeOne = (desk: Desk): Question<readonly RoundsThatMayBeOne[]> =>
  ask(
    desk,
    'rounds that may be one',
    () => desk.store.changes(),
    async () => {
      const rounds = await thingsOfKind(desk, 'round');
      const works = new Set<string>();
      for (const a of rounds)
        if (rounds.some((b) => b.body.sculpture === a.body.sculpture && b.lead.device !== a.lead.device))
          works.add(a.body.sculpture);
      const pairs: RoundsThatMayBeOne[] = [];
      for (const sculpture of works) {
        const record = await recordOf(desk, sculpture);
        pairs.push(...pairsIn(record).map((pair) => ({ ...pair, sculpture })));
      }
      return pairs;
    },
  );
