import { rowOf } from '../../device/workers';
import type { NeedOf } from '../../engine/condition';
import type { Advice, Life, ZoneHolds } from '../../engine/hold';
import type { SculptureRecord } from '../../engine/record';
import type { Trends } from '../../engine/trend';
import type { Desk, Question } from '../desk';
import { thingsOfKind } from '../theThing';
import { adviceFound, bringUpToDate, firstFound, follow, isBehind, needFound, rowKept, trendsFound } from './figures';
import { live } from './live';

/** What was worked out for one work. */
export interface WorkInsights {
  /** All that is not of a round, the latest round whole, of the others their days. */
  readonly record: SculptureRecord;
  /** The latest round scored and classed; null where nobody has looked yet. */
  readonly need: NeedOf | null;
  readonly holds: readonly ZoneHolds[];
  /** By zone; zones that ended have none. */
  readonly advice: readonly Advice[];
}

/** The same, with its series and with what the holds of all works tell together. */
export interface Insights extends WorkInsights {
  readonly trends: Trends;
  readonly lives: readonly Life[];
}

/** What was worked out for the whole collection. */
export interface CollectionInsights {
  readonly lives: readonly Life[];
  readonly perWork: readonly WorkInsights[];
  /** Works whose figures are still being worked out. */
  readonly workingOut: number;
}

export const livesKept = async (desk: Desk): Promise<readonly Life[]> =>
  (await rowKept<{ readonly lives: readonly Life[] }>(desk, rowOf.lives))?.lives ?? [];

export const ofWork = async (desk: Desk, work: string) => {
  const [need, first, advice] = await Promise.all([
    needFound(desk, work),
    firstFound(desk, work),
    adviceFound(desk, work),
  ]);
  const value: WorkInsights | undefined =
    need && first && advice
      ? { record: first.value.record, need: need.value, holds: first.value.holds, advice: advice.value }
      : undefined;
  return { value, right: need?.right === true && advice?.right === true && first !== undefined };
};

/** Holds, trends, advice and classes of one work; undefined while they are worked out, null where the work is not here. */
export const insightsOf = (desk: Desk, sculpture: string): Question<Insights | null | undefined> =>
  live<Insights | null | undefined>(desk, `insights ${sculpture}`, async () => {
    const current = await desk.store.current(sculpture);
    if (!current || current.gone) return { value: null };
    const { value, right } = await ofWork(desk, sculpture);
    const trends = await trendsFound(desk, sculpture);
    const upToDate = right && !(await isBehind(desk));
    return {
      value: value && trends && { ...value, trends: trends.value, lives: await livesKept(desk) },
      after: upToDate ? (trends ? undefined : () => follow(desk, sculpture)) : () => bringUpToDate(desk),
    };
  });

/** The same of every work, and what they teach together. */
export const collectionInsights = (desk: Desk): Question<CollectionInsights> =>
  live(desk, 'insights', async () => {
    const works = (await thingsOfKind(desk, 'sculpture')).map(({ thing }) => thing);
    const kept = await Promise.all(works.map((work) => ofWork(desk, work)));
    const behind = kept.filter(({ right }) => !right).length;
    return {
      value: { lives: await livesKept(desk), perWork: kept.flatMap(({ value }) => value ?? []), workingOut: behind },
      after: behind > 0 || (await isBehind(desk)) ? () => bringUpToDate(desk) : undefined,
    };
  });
