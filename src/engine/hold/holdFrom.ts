import { daysBetween, type Reason } from '../record';
import type { Coating, WorkOnZone } from './coating';
import type { CoatingOn, Hold, NoHold } from './hold';
import { holdNumbers } from './numbers';
import { because } from './reasonCodes';
import type { Sighting } from './sighting';

/** What stopped the watch on a coating, if anything did: the next coating, a break of the series, the end of the zone. */
export interface Stop {
  readonly what: 'coating' | 'break' | 'zone';
  /** First day it may have happened. */
  readonly day: string;
  /** False where its date is vague: looks of that day may have come after it. */
  readonly sure: boolean;
  readonly type: string;
  readonly date: string;
}

export interface HoldAround {
  readonly zone: string;
  readonly coating: Coating;
  readonly stop: Stop | undefined;
  readonly sightings: readonly Sighting[];
  readonly work: WorkOnZone;
  readonly span: number;
  /** Thing names with two versions that nobody has settled. */
  readonly unsettled: ReadonlySet<string>;
}

export interface Told {
  readonly told: Hold | NoHold;
  readonly on: CoatingOn;
}

export const monthsBetween = (from: string, to: string): number =>
  daysBetween(from, to) / holdNumbers.daysInMonth.value;

/** One day of looking: green outweighs clear, since who saw it did see it. */
interface DaySeen {
  readonly day: string;
  readonly word: 'clear' | 'green';
  readonly planned: boolean;
  readonly dry: boolean;
  readonly disagree: boolean;
  readonly things: readonly string[];
}

const daysSeen = (sightings: readonly Sighting[]): DaySeen[] => {
  const days = new Map<string, Sighting[]>();
  for (const seen of sightings) days.set(seen.day, [...(days.get(seen.day) ?? []), seen]);
  return [...days].flatMap(([day, all]) => {
    const green = all.filter(({ word }) => word === 'green');
    const clear = all.filter(({ word }) => word === 'clear');
    const telling = green.length > 0 ? green : clear;
    if (telling.length === 0) return [];
    return {
      day,
      word: green.length > 0 ? ('green' as const) : ('clear' as const),
      planned: telling.some(({ planned }) => planned),
      dry: telling.some(({ dry }) => dry),
      disagree: green.length > 0 && clear.length > 0,
      things: telling.flatMap(({ things }) => things),
    };
  });
};

const provesNothing = (sightings: readonly Sighting[]): Reason[] => {
  const counts = new Map<string, number>();
  for (const { word } of sightings)
    if (word !== 'clear' && word !== 'green') counts.set(word, (counts.get(word) ?? 0) + 1);
  return [...counts].map(([why, count]) => because('hold: proves nothing', { count, why }));
};

/** How the surface stood before the coating: what was last said of green, and whether it was cleaned off in between. */
const before = ({ coating, sightings, work }: HoldAround): Reason[] => {
  const earlier = sightings.filter(
    ({ day, afterWork }) => day <= coating.before && !(day === coating.before && afterWork),
  );
  const telling = earlier.findLast(({ word }) => word === 'green' || word === 'clear');
  const [last] = daysSeen(earlier.filter(({ day }) => day === telling?.day));
  if (last?.word !== 'green') return [];
  const cleaned = work.cleanings.filter(({ from, to }) => from >= last.day && to <= coating.to).at(-1)?.things[0];
  return cleaned
    ? [because('hold: cleaned before', { treatment: cleaned.body.type, date: cleaned.body.date })]
    : [because('hold: green stood before', { date: last.day })];
};

/** Looks that surely came after the coating and before what stopped the watch. */
const watched = ({ coating, stop, sightings }: HoldAround): readonly Sighting[] => {
  const exact = coating.from === coating.to;
  return sightings.filter(({ day, afterWork }) => {
    const after = day > coating.to || (exact && day === coating.to && afterWork);
    const stillOn = !stop || day < stop.day || (stop.sure && stop.what !== 'zone' && day === stop.day && !afterWork);
    return after && stillOn;
  });
};

const stopped = (stop: Stop): { readonly seen: Reason; readonly unseen: Reason } => {
  const { what, type: treatment, date } = stop;
  if (what === 'coating')
    return {
      seen: because('hold: coated again', { date }),
      unseen: because('hold: coated again before a look', { date }),
    };
  if (what === 'break') {
    const params = { treatment, date };
    return { seen: because('hold: broken off', params), unseen: because('hold: broken off before a look', params) };
  }
  return { seen: because('hold: zone ended', { date }), unseen: because('hold: zone ended before a look', { date }) };
};

/** What can be told of one coating in one zone: how long it held, or why that is not known. */
export const holdFrom = (around: HoldAround): Told => {
  const { zone, coating, stop, span, unsettled } = around;
  const first = coating.things[0];
  const type = first?.body.type ?? '';
  const named = { zone, coating: first?.thing ?? '', type };
  const within = watched(around);
  const seen = daysSeen(within);
  const vague = coating.from !== coating.to;
  const green = seen.find(({ word }) => word === 'green');
  const clear = seen.filter(({ day, word }) => word === 'clear' && !(green && day >= green.day));
  const last = clear.at(-1);
  const on = (state: CoatingOn['state']): CoatingOn => ({
    coating: named.coating,
    type,
    from: coating.from,
    to: coating.to,
    state,
    lastClear: last?.day ?? null,
    firstSeen: green?.day ?? null,
  });
  const vagueness = vague ? [because('hold: coating day vague', { first: coating.from, last: coating.to })] : [];
  const silent = provesNothing(within);
  const none = (state: CoatingOn['state'], ...reasons: Reason[]): Told => ({
    told: { ...named, start: coating.from, reasons: [...reasons, ...vagueness, ...silent] },
    on: on(state),
  });

  const soon = holdNumbers.cleanWithin.value;
  if (green && !last && daysBetween(coating.to, green.day) <= soon) {
    const perhaps = vague && daysBetween(coating.from, green.day) > soon;
    return none(
      'not clean',
      because(perhaps ? 'hold: perhaps no clean start' : 'hold: no clean start', { date: green.day }),
    );
  }
  if (!green && !last) return none('unknown', stop ? stopped(stop).unseen : because('hold: nobody has looked since'));

  const started = clear.find(({ day, dry }) => dry && daysBetween(coating.from, day) <= soon);
  const used = [...coating.things.map(({ thing }) => thing), ...(last?.things ?? []), ...(green?.things ?? [])];
  const twice = used.filter((thing) => unsettled.has(thing)).length;
  const inPassing = [green, last].some((day) => day?.planned === false);
  const again = green && seen.find(({ day, word }) => day > green.day && word === 'clear');
  const ended = (): Reason => {
    if (green) return because('hold: returned', { first: last?.day ?? '', last: green.day });
    return stop ? stopped(stop).seen : because('hold: still clear', { date: last?.day ?? '' });
  };
  const reasons: Reason[] = [
    ...(started
      ? [because('hold: start seen clear', { date: started.day })]
      : [because('hold: start assumed clear'), ...before(around)]),
    ended(),
    ...vagueness,
    ...(coating.things.length > 1 ? [because('hold: coatings counted as one', { count: coating.things.length })] : []),
    ...(inPassing ? [because('hold: noticed in passing')] : []),
    ...(green?.disagree ? [because('hold: looks of one day disagree', { date: green.day })] : []),
    ...(again ? [because('hold: seen clear again', { date: again.day })] : []),
    ...silent,
    ...(twice > 0 ? [because('hold: two versions, not settled', { things: twice })] : []),
  ];
  const hold: Hold = {
    ...named,
    start: coating.from,
    clean: started ? 'verified' : 'assumed',
    lower: last ? Math.max(0, monthsBetween(coating.to, last.day)) : 0,
    upper: green ? monthsBetween(coating.from, green.day) : null,
    lastClear: last?.day ?? null,
    firstSeen: green?.day ?? null,
    end: green ? 'returned' : stop?.what === 'coating' ? 'coated again' : 'still clear',
    inPassing,
    span,
    reasons,
  };
  return { told: hold, on: on(green ? 'back' : 'clear') };
};
