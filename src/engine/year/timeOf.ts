import type { Reason } from '../record';
import { reaches } from '../trade';
import type { WorkFacts } from './facts';
import { type YearNumber, yearNumbers } from './numbers';
import type { Pace, Span } from './paceOf';
import type { Row } from './proposalOf';
import { because } from './reasonCodes';

/** Minutes, with the sum of all that goes quick and of all that goes slow. */
export interface Time extends Span {
  readonly reasons: readonly Reason[];
}

export interface WorkTime {
  readonly work: string;
  /** The round or the look, minutes at the work. */
  readonly survey: Span;
  /** Washing and waxing, minutes of one person, all waxes of the year. */
  readonly wax: Span;
}

const none: Span = { value: 0, low: 0, high: 0 };
const numberSpan = ({ value, low = value, high = value }: YearNumber): Span => ({ value, low, high });
const timesOf = (n: number, each: Span): Span => ({ value: n * each.value, low: n * each.low, high: n * each.high });
const add = (...spans: readonly Span[]): Span =>
  spans.reduce(
    (sum, span) => ({ value: sum.value + span.value, low: sum.low + span.low, high: sum.high + span.high }),
    none,
  );

const offGround = new Set(reaches.filter(({ from }) => from !== 'ground' && from !== 'step').map(({ id }) => id));

/** How long a work takes in a year. Zones that showed something last time are taken to show something again. */
export const timeOf = (
  facts: WorkFacts,
  row: Pick<Row, 'survey' | 'waxes'>,
  stations: number,
  pace: Pace,
  labour: Span,
): WorkTime => {
  const found = new Set(
    (facts.need?.score.zones ?? []).filter(({ findings }) => findings.length > 0).map(({ zone }) => zone),
  );
  const withFinding = facts.zones.filter(({ zone }) => !facts.need || found.has(zone.thing)).length;
  const full = (): Span =>
    add(
      numberSpan(yearNumbers.setUp),
      timesOf(withFinding, pace.withFinding),
      timesOf(facts.zones.length - withFinding, pace.oneTouch),
      timesOf(stations, numberSpan(yearNumbers.station)),
      timesOf(facts.zones.filter(({ zone }) => offGround.has(zone.body.reach)).length, numberSpan(yearNumbers.ladder)),
    );
  const m2 = facts.zones.reduce((sum, zone) => sum + zone.m2, 0);
  const once: Span = {
    value: (m2 / labour.value) * yearNumbers.minutesInHour.value,
    low: (m2 / labour.high) * yearNumbers.minutesInHour.value,
    high: (m2 / labour.low) * yearNumbers.minutesInHour.value,
  };
  return {
    work: facts.work,
    survey: row.survey === 'full' ? full() : row.survey === 'look' ? numberSpan(yearNumbers.look) : none,
    wax: timesOf(row.waxes, once),
  };
};

/** The whole year, or a day of it: survey and waxing apart, with what the figures rest on. */
export const timeOfAll = (
  works: readonly WorkTime[],
  pace: Pace,
  labour: { readonly reasons: readonly Reason[] },
): { readonly survey: Time; readonly wax: Time } => {
  const range = because('year: all slow or all quick');
  return {
    survey: { ...add(...works.map(({ survey }) => survey)), reasons: [...pace.reasons, range] },
    wax: { ...add(...works.map(({ wax }) => wax)), reasons: [...labour.reasons, range] },
  };
};
