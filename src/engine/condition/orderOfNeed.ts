import type { Figure, Reason, SculptureRecord } from '../record';
import type { Level } from '../trade';
import { type Classes, levelOf, type RoundClasses } from './classesOf';
import { figureAround } from './figure';
import type { PersonDanger } from './personChecks';
import { because } from './reasonCodes';
import type { SculptureScore } from './sculptureIndex';
import type { ZoneScore } from './zoneIndex';

/** One sculpture's latest round, scored and classed. */
export interface NeedOf {
  readonly record: SculptureRecord;
  readonly score: SculptureScore;
  readonly classes: RoundClasses;
  /** Burden each zone's trend adds by the next round, by zone; a zone left out has no trend to carry on. */
  readonly growth?: ReadonlyMap<string, Figure>;
}

/** A place in the list and what put it there. `rank` starts at 1; equals share one. */
export interface Rank {
  readonly sculpture: string;
  /** Missing in the list of sculptures. */
  readonly zone?: string;
  readonly rank: number;
  /** As set by a person, else as proposed. */
  readonly urgency: Level;
  /** Area x significance x (100 - Z), in m2 x points, with its 90 % range. */
  readonly burden: Figure;
  /** Zone or sculpture index, 0 to 100. */
  readonly z: number;
  readonly reasons: readonly Reason[];
}

export interface PersonFirst extends PersonDanger {
  readonly sculpture: string;
}

export interface OrderOfNeed {
  /** Apart from metal and above both lists: until a named person closes each. */
  readonly people: readonly PersonFirst[];
  readonly zones: readonly Rank[];
  readonly sculptures: readonly Rank[];
  /** Zones not judged this time: never ranked as if they were sound. */
  readonly notRanked: readonly {
    readonly sculpture: string;
    readonly zone: string;
    readonly reasons: readonly Reason[];
  }[];
}

type Unranked = Omit<Rank, 'rank'>;

/** Nothing is expected to come where no trend stands. */
const noGrowth: Omit<Figure, 'reasons'> = { value: 0, low: 0, high: 0 };

const burdenOfZone = (zone: ZoneScore, grown: Figure | undefined): Figure => {
  const { area, significance } = zone;
  const missing = 100 - zone.value;
  const now = area.m2 * significance * missing;
  const growth = grown ?? noGrowth;
  const reach = {
    down: Math.hypot(
      significance * Math.hypot(area.m2 * (zone.high - zone.value), missing * (area.m2 - area.low)),
      growth.value - growth.low,
    ),
    up: Math.hypot(
      significance * Math.hypot(area.m2 * (zone.value - zone.low), missing * (area.high - area.m2)),
      growth.high - growth.value,
    ),
  };
  return figureAround(now + growth.value, reach, { least: 0, most: area.high * significance * 100 }, [
    because('need: burden', { burden: now, m2: area.m2, significance, index: zone.value }),
    grown ? because('need: growth', { growth: grown.value }) : because('not yet known', { what: 'forecast' }),
  ]);
};

/** Most pressing first; the same order whatever order they came in. */
const byNeed = (a: Unranked, b: Unranked): number =>
  b.urgency - a.urgency || b.burden.value - a.burden.value || a.z - b.z || nameOrder(a, b);

const nameOf = ({ sculpture, zone }: Unranked): string => `${sculpture} ${zone ?? ''}`;
const nameOrder = (a: Unranked, b: Unranked): number => (nameOf(a) < nameOf(b) ? -1 : 1);

const againstNext = (here: Unranked, next: Unranked | undefined): Reason => {
  if (!next) return because('need: last');
  if (here.urgency !== next.urgency) return because('need: before the next by urgency');
  if (here.burden.value !== next.burden.value) return because('need: before the next by burden');
  if (here.z !== next.z) return because('need: before the next by index');
  return because('need: level with the next');
};

const level = (a: Unranked, b: Unranked | undefined): boolean =>
  b !== undefined && a.urgency === b.urgency && a.burden.value === b.burden.value && a.z === b.z;

const ranked = (rows: readonly Unranked[]): readonly Rank[] => {
  const sorted = [...rows].sort(byNeed);
  let rank = 0;
  return sorted.map((row, index) => {
    if (!level(row, sorted[index - 1])) rank = index + 1;
    return { ...row, rank, reasons: [...row.reasons, againstNext(row, sorted[index + 1])] };
  });
};

const urgencyReasons = (classes: Classes, urgency: Level): readonly Reason[] => [
  because('need: urgency', { urgency, setBy: classes.set?.urgency === undefined ? '' : classes.set.setBy }),
  ...classes.urgency.reasons,
];

const zoneRows = ({ record, score, classes, growth }: NeedOf): readonly Unranked[] =>
  score.zones.flatMap((zone) => {
    const own = classes.zones.find(({ about }) => about === zone.zone);
    const urgency = own && levelOf(own, 'urgency');
    if (!own || urgency === null || urgency === undefined) return [];
    const burden = burdenOfZone(zone, growth?.get(zone.zone));
    const reasons = [...urgencyReasons(own, urgency), ...burden.reasons];
    return [{ sculpture: record.sculpture.thing, zone: zone.zone, urgency, burden, z: zone.value, reasons }];
  });

const sculptureRow = ({ record, score, classes, growth }: NeedOf): readonly Unranked[] => {
  const urgency = levelOf(classes.sculpture, 'urgency');
  if (urgency === null || score.value === null) return [];
  const parts = score.zones.map((zone) => burdenOfZone(zone, growth?.get(zone.zone)));
  const sum = (of: (figure: Figure) => number): number => parts.reduce((total, part) => total + of(part), 0);
  const value = sum((part) => part.value);
  const reach = {
    down: Math.hypot(...parts.map((part) => part.value - part.low)),
    up: Math.hypot(...parts.map((part) => part.high - part.value)),
  };
  const grown = score.zones.flatMap(({ zone }) => growth?.get(zone) ?? []);
  const forecast =
    grown.length > 0
      ? because('need: growth', { growth: grown.reduce((total, { value: more }) => total + more, 0) })
      : because('not yet known', { what: 'forecast' });
  const burden = figureAround(value, reach, { least: 0, most: Number.POSITIVE_INFINITY }, [forecast]);
  const reasons = [...urgencyReasons(classes.sculpture, urgency), forecast];
  return [{ sculpture: record.sculpture.thing, urgency, burden, z: score.value, reasons }];
};

/**
 * Zones and sculptures in order of need: urgency class, then burden, then the lower index. People come first and apart. Each rank
 * says why, and what put it before the next.
 */
export const orderOfNeed = (needs: readonly NeedOf[]): OrderOfNeed => ({
  people: needs.flatMap(({ record, classes }) =>
    classes.dangers.map((danger) => ({ ...danger, sculpture: record.sculpture.thing })),
  ),
  zones: ranked(needs.flatMap(zoneRows)),
  sculptures: ranked(needs.flatMap(sculptureRow)),
  notRanked: needs.flatMap(({ record, score }) =>
    score.unscored.map(({ zone, reasons }) => ({ sculpture: record.sculpture.thing, zone, reasons })),
  ),
});
