import { seedOf } from '../chance';
import { gettingShorter } from '../life';
import { endOf, type Reason, type SculptureRecord, type Thing } from '../record';
import { type Coating, type WorkOnZone, workOn } from './coating';
import { groupOf } from './exposureGroup';
import type { CoatingOn, Hold, NoHold, Span, ZoneHolds } from './hold';
import { holdFrom, type Stop } from './holdFrom';
import { intervalOf } from './interval';
import { rulesOf } from './numbers';
import { because } from './reasonCodes';
import { eventOf, sightingsOf } from './sighting';

export const isHold = (told: Hold | NoHold): told is Hold => 'lower' in told;

type Work = WorkOnZone['breaks'][number];

/** True where a break may have come after a coating that was meant to start a hold, or its order to it cannot be told. */
const crosses = (coating: Coating, work: Work): boolean =>
  work.from <= coating.to && coating.from <= work.to && !(work.from === coating.from && work.to === coating.to);

/** Breaks with no coating between them are one: nothing is told of the stretch between. The first span has none. */
const spanBreaks = ({ breaks, coatings }: WorkOnZone): Work[][] => {
  const spans: Work[][] = [[]];
  for (const broken of breaks) {
    const current = spans.at(-1) as Work[];
    const since = current.at(-1);
    const between = coatings.some(({ from }) => from < broken.from && (!since || from >= since.from));
    if (between) spans.push([broken]);
    else current.push(broken);
  }
  return spans;
};

/** Where the watch on a coating stops: at the next coating, the next break or the end of the zone, whichever may come first. */
const stopOf = (
  coating: Coating,
  next: Coating | undefined,
  breaks: readonly Work[],
  end: string | undefined,
): Stop | undefined => {
  const broken = breaks.find(({ from }) => from > coating.to);
  const described = (what: Stop['what'], work: Work | undefined, day: string, sure: boolean): Stop => ({
    what,
    day,
    sure,
    type: work?.things[0]?.body.type ?? '',
    date: work?.things[0]?.body.date ?? day,
  });
  const stops = [
    ...(next ? [described('coating', next, next.before, next.before === next.to)] : []),
    ...(broken ? [described('break', broken, broken.from, broken.from === broken.to)] : []),
    ...(end !== undefined ? [described('zone', undefined, end, true)] : []),
  ];
  // On one day the break comes first: a surface is taken off, then coated.
  const rank = { break: 0, coating: 1, zone: 2 } as const;
  return stops.sort((a, b) => a.day.localeCompare(b.day) || rank[a.what] - rank[b.what])[0];
};

const ofZone = (record: SculptureRecord, zone: Thing<'zone'>, today: string): ZoneHolds => {
  const event = eventOf(record, zone.thing);
  const { returnLevel: level } = rulesOf(record);
  const sightings = sightingsOf(record, zone.thing, { event, level, today });
  const work = workOn(record, zone, today);
  const end = endOf(zone);
  const over = end !== undefined && end <= today ? end : undefined;
  const unsettled = new Set(record.unsettled);
  const spans = spanBreaks(work);
  const named = (broken: Work) => ({
    treatment: broken.things[0]?.body.type ?? '',
    date: broken.things[0]?.body.date ?? '',
  });

  const told: (Hold | NoHold)[] = [];
  let onNow: CoatingOn | null = null;
  work.coatings.forEach((coating, i) => {
    const first = coating.things[0];
    const nothing = (...reasons: Reason[]): NoHold => ({
      zone: zone.thing,
      coating: first?.thing ?? '',
      type: first?.body.type ?? '',
      start: coating.from === coating.to ? coating.from : (first?.body.date ?? coating.from),
      reasons,
    });
    const crossing = work.breaks.find((broken) => crosses(coating, broken));
    const since = spans.filter((span) => span[0] !== undefined && span[0].from <= coating.from).length;
    if (coating.from === '0000') {
      told.push(
        nothing(
          because('hold: date not readable', { treatment: first?.body.type ?? '', date: first?.body.date ?? '' }),
        ),
      );
      onNow = null;
    } else if (crossing) {
      told.push(nothing(because('hold: coating and break not in order', named(crossing))));
      onNow = null;
    } else {
      const stop = stopOf(coating, work.coatings[i + 1], work.breaks, over);
      const span = spans[0]?.length ? since - 1 : since;
      const { told: one, on } = holdFrom({ zone: zone.thing, coating, stop, sightings, work, span, unsettled });
      told.push(one);
      onNow = stop ? null : on;
    }
  });

  const holds = told.filter(isHold);
  const shorteningOf = (span: number) =>
    gettingShorter(holds.filter((hold) => hold.span === span).map(intervalOf), seedOf(zone.thing));
  const shownSpans: Span[] = spans.map((broken, i) => ({
    since: broken[0]?.from ?? null,
    treatments: broken.flatMap(({ things }) =>
      things.map(({ thing, body }) => ({ treatment: thing, type: body.type, date: body.date })),
    ),
    causeRemoved: broken.some(({ things }) => things.some(({ body }) => body.type === 'cause removed')),
    shortening: shorteningOf(i),
  }));
  return {
    zone: zone.thing,
    group: groupOf(zone.body.exposure),
    event,
    holds,
    noHolds: told.filter((one): one is NoHold => !isHold(one)),
    spans: shownSpans,
    shortening: shorteningOf(spans.length - 1),
    onNow,
    reasons: [
      event === 'spot' ? because('hold: told by looks') : because('hold: told by cover', { level }),
      ...(work.coatings.length === 0 ? [because('hold: no coating recorded')] : []),
      ...(sightings.length === 0 ? [because('hold: nobody looked at all')] : []),
      ...(over !== undefined ? [because('hold: zone ended', { date: over })] : []),
      ...work.reasons,
    ],
  };
};

/**
 * How long each coating kept the green away, zone by zone in walking order, zones that have ended included. Months; days are local
 * calendar days. `today` is YYYY-MM-DD: nothing dated after it counts.
 */
export const holdsOf = (record: SculptureRecord, today: string): ZoneHolds[] =>
  record.zones.map((zone) => ofZone(record, zone, today));
