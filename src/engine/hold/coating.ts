import { dayRange, endOf, type Reason, type SculptureRecord, type Thing } from '../record';
import { treatmentOf } from '../trade';
import { because } from './reasonCodes';

/** Something done to a zone, with the days it may have been done on. */
interface Work {
  readonly things: readonly Thing<'treatment'>[];
  readonly from: string;
  readonly to: string;
}

/** A coating; several whose order cannot be told are one: the last of them lies between `from` and `to`. */
export interface Coating extends Work {
  /** First day any of them may have been put on: the end of what was seen of the coating before. */
  readonly before: string;
}

export interface WorkOnZone {
  readonly coatings: readonly Coating[];
  /** What breaks the series, each apart, in order. */
  readonly breaks: readonly Work[];
  /** What takes the green away before a coating. */
  readonly cleanings: readonly Work[];
  /** Treatments that had to be left out, and why. */
  readonly reasons: readonly Reason[];
}

type Zone = Thing<'zone'>;

/** The day a zone was made out of others, by splitting or joining; undefined for one that was there from the start. */
const birthOf = (record: SculptureRecord, zone: string): string | undefined =>
  record.zones
    .flatMap(({ body }) => [
      ...(body.split?.into.some((part) => part.zone === zone) ? [body.split.on] : []),
      ...(body.joined?.into === zone ? [body.joined.on] : []),
    ])
    .sort()[0];

const byTime = (a: Work, b: Work): number =>
  a.from.localeCompare(b.from) || a.to.localeCompare(b.to) || nameOf(a).localeCompare(nameOf(b));
const nameOf = ({ things }: Work): string => things[0]?.thing ?? '';

/** Coatings of one day are one; so are those whose vague dates overlap, since nobody can say which came last. */
const joined = (coatings: readonly Work[]): Coating[] => {
  const list: Coating[] = [];
  for (const one of coatings) {
    const last = list.at(-1);
    if (!last || one.from > last.to) {
      list.push({ ...one, before: one.from });
      continue;
    }
    const latest = (a: string, b: string) => (a > b ? a : b);
    list[list.length - 1] = {
      things: [...last.things, ...one.things],
      from: latest(last.from, one.from),
      to: latest(last.to, one.to),
      before: last.before,
    };
  }
  return list;
};

/** All that was done to a zone while it was one, in order; a treatment that names no zone was done to all. */
export const workOn = (record: SculptureRecord, zone: Zone, today: string): WorkOnZone => {
  const end = endOf(zone);
  const birth = birthOf(record, zone.thing);
  const reasons: Reason[] = [];
  const works: Work[] = [];
  for (const thing of record.treatments) {
    const { zones, date, type } = thing.body;
    const row = treatmentOf(type);
    if (!row || !(row.coats || row.breaksSeries || row.cleanStart)) continue;
    if (zones.length > 0 && !zones.includes(zone.thing)) continue;
    const range = dayRange(date);
    if (end !== undefined && range.from >= end) continue;
    if (zones.length === 0 && birth !== undefined && range.to < birth) continue;
    if (range.from === '0000' && range.to === '9999')
      reasons.push(because('hold: date not readable', { treatment: type, date }));
    else if (range.from > today) reasons.push(because('hold: dated after today', { treatment: type, date }));
    else works.push({ things: [thing], from: range.from, to: range.to < today ? range.to : today });
  }
  works.sort(byTime);
  const are = (is: 'coats' | 'breaksSeries' | 'cleanStart') =>
    works.filter(({ things }) => things.some(({ body }) => treatmentOf(body.type)?.[is]));
  return { coatings: joined(are('coats')), breaks: are('breaksSeries'), cleanings: are('cleanStart'), reasons };
};
