import { type Desk, leaveZone, type Outcome, touchZone } from '../actions';
import type { BodyOf, ZoneTouch } from '../engine/record';
import { kindOf, ladder } from '../engine/trade';
import type { DemoSeries, DemoZone } from './garden';

type Coverage = NonNullable<BodyOf<'finding'>['coverage']>;

/** The answer, or a stop with the reason: the demo is made whole or not at all. */
export const done = async <T>(outcome: Promise<Outcome<T>>): Promise<T> => {
  const came = await outcome;
  if (!came.ok) throw new Error(`The demo could not be made: ${JSON.stringify(came.reason)}`);
  return came;
};

/** A cover in percent as the ladder takes it: one of its steps, or a value set between within the step's bin. */
export const coverageOf = (percent: number): Coverage => {
  const value = percent / 100;
  const exact = ladder.find((step) => step.value === value);
  const step = exact ?? ladder.find(({ low, high }) => value > low && value <= high);
  if (!step) throw new Error(`No step of the ladder holds ${percent} %.`);
  return {
    value: exact ? step.value : value,
    low: step.low,
    high: step.high,
    method: exact ? 'ladder' : 'ladder, adjusted',
  };
};

const sameStep = (was: number, is: number): boolean => {
  const { low, high, value } = coverageOf(is);
  return was / 100 === value || (was / 100 > low && was / 100 <= high);
};

/** What she touches for one kind of finding, knowing what stood there the year before. */
const touchesFor = (series: DemoSeries, was: number, is: number): ZoneTouch[] => {
  const measure = kindOf(series.kind)?.measure ?? 'area';
  const origin = series.origin ?? 'metal';
  const key = `${series.kind}/${origin}`;
  const extent: ZoneTouch[] =
    measure === 'area'
      ? [{ do: 'cover', coverage: coverageOf(is) }]
      : measure === 'count'
        ? [{ do: 'count', count: series.count ?? 'one' }]
        : [{ do: 'there', key }];
  if (was > 0 && is === 0) return [{ do: 'gone', key }];
  if (was > 0) {
    const changed = measure === 'area' && !sameStep(was, is);
    return [{ do: 'open', key }, ...extent, ...(changed ? [{ do: 'against', against: 'changed' } as const] : [])];
  }
  if (is === 0) return [];
  return [
    { do: 'kind', kind: series.kind, measure },
    { do: 'origin', origin },
    ...(measure === 'area' || measure === 'count' ? extent : []),
    { do: 'severity', severity: series.severity ?? 'slight' },
    ...(series.activity ? [{ do: 'activity', activity: series.activity } as const] : []),
  ];
};

/** One zone of a yearly round, touch by touch, and on to the next. `before` are the covers last seen there, none in the first year. */
export const walkZone = async (
  desk: Desk,
  round: string,
  zone: string,
  table: DemoZone,
  year: number,
  before: ReadonlyMap<string, number>,
): Promise<ReadonlyMap<string, number>> => {
  const cover = (series: DemoSeries) => series.cover[year] ?? null;
  if (table.notLooked && table.series.every((series) => cover(series) === null)) {
    await done(touchZone(desk, round, zone, { do: 'could not reach' }));
    await done(leaveZone(desk, round, zone, { how: 'not looked', reason: table.notLooked }));
    return before;
  }
  const seen = new Map(before);
  for (const series of table.series) {
    const is = cover(series) ?? 0;
    for (const touch of touchesFor(series, before.get(series.kind) ?? 0, is))
      await done(touchZone(desk, round, zone, touch));
    seen.set(series.kind, is);
  }
  const beading = table.beading?.[year];
  if (beading) await done(touchZone(desk, round, zone, { do: 'beading', beading }));
  const found = table.series.some((series) => (cover(series) ?? 0) > 0);
  await done(leaveZone(desk, round, zone, { how: found ? 'next' : 'nothing' }));
  return seen;
};
