import type { Survey } from '../engine/exchange';
import { firmness } from '../engine/firmness';
import {
  collectionOwn,
  type FirstPass,
  firstPass,
  lives as livesOfAll,
  type SecondPass,
  secondPass,
  seedOfDraws,
} from '../engine/reckoning';
import {
  assemble,
  asThing,
  type BodyOf,
  byWithin,
  type CollectionOwn,
  type Current,
  gather,
  nameOf,
  type SculptureRecord,
} from '../engine/record';
import { lastDayIn } from './lastDayIn';

/** One work: everything said of it, what it comes to by itself, and beside the others. */
export interface ReckonedWork {
  readonly record: SculptureRecord;
  readonly first: FirstPass;
  readonly second: SecondPass;
}

/**
 * What a survey comes to, by the same passes as on the tablet. `today` is a calendar day; without one it is the last the survey tells
 * of. It is null, and nothing hangs on it, where the survey holds no entry.
 */
export const reckoned = (survey: Survey, todayGiven?: string) => {
  const currents = [...assemble(survey.entries).values()];
  const own = ownOf(currents, survey.collection);
  const within = byWithin(currents);
  const records = recordsOf(within, own);
  const today = todayGiven ?? lastDayIn(records, survey.entries);
  const firsts = records.map((record) => ({ record, first: firstPass(record, today ?? '') }));
  const lives = livesOfAll(firsts.map(({ first }) => first.holds));
  const works = firsts.map((work): ReckonedWork => ({ ...work, second: secondPass(work.first, lives, today ?? '') }));
  const needs = works.flatMap(({ second }) => second.need ?? []);
  const climate = climateIn(currents, survey.collection);
  return {
    own,
    climate,
    within,
    today,
    works,
    lives,
    needs,
    firmness: firmness(needs, seedOfDraws),
    seed: seedOfDraws,
  };
};

const climateIn = (currents: readonly Current[], collection: string): BodyOf<'climate'> | null => {
  const found = currents.find(({ thing, gone }) => !gone && thing === nameOf.climate(collection));
  return (found && asThing(found, 'climate')?.body) ?? null;
};

const ownOf = (currents: readonly Current[], collection: string): CollectionOwn => {
  const named = (thing: string) => currents.find((current) => !current.gone && current.thing === thing);
  const of = (kind: string) => currents.filter((current) => current.kind === kind);
  return collectionOwn({
    scale: named(nameOf.scale(collection)),
    holdRules: named(nameOf.holdRules(collection)),
    reratings: of('rerating'),
    rounds: of('round'),
    eyeChecks: of('eyeCheck'),
  });
};

const byNumber = new Intl.Collator('en', { numeric: true });

const recordsOf = (within: ReadonlyMap<string, readonly Current[]>, own: CollectionOwn): SculptureRecord[] =>
  [...within.values()]
    .flatMap((things) => gather(things, own) ?? [])
    .sort(
      ({ sculpture: a }, { sculpture: b }) =>
        byNumber.compare(a.body.number, b.body.number) || (a.thing < b.thing ? -1 : 1),
    );
