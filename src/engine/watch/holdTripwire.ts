import { type Hold, holdNumbers, type ZoneHolds } from '../hold';
import { addDays, type Reason } from '../record';
import { because } from './reasonCodes';
import { cannotTell, met, notMet, type Tripwire, type TripwireState } from './tripwireState';

/** One season: the coatings of one calendar year, and whether each of their holds lies surely past the line. */
interface Season {
  readonly year: string;
  readonly answer: 'yes' | 'no' | 'open';
  readonly since: string;
  readonly reasons: readonly Reason[];
}

const answerOf = ({ lower, upper }: Hold, level: number, side: 'over' | 'under'): Season['answer'] => {
  if (lower >= level) return side === 'over' ? 'yes' : 'no';
  if (upper !== null && upper <= level) return side === 'over' ? 'no' : 'yes';
  return 'open';
};

const told = (hold: Hold, level: number): Reason => {
  const { zone, lower, upper, start } = hold;
  const code = lower >= level ? 'over' : upper !== null && upper <= level ? 'under' : 'between';
  return because(`tripwire: hold ${code}`, { zone, level, first: lower, last: upper ?? '', date: start });
};

const seasonOf = (year: string, holds: readonly Hold[], level: number, side: 'over' | 'under'): Season => {
  const answers = holds.map((hold) => answerOf(hold, level, side));
  const answer = answers.includes('no') ? 'no' : answers.includes('open') || holds.length === 0 ? 'open' : 'yes';
  const days = holds.map((hold) =>
    side === 'over'
      ? addDays(hold.start, Math.ceil(level * holdNumbers.daysInMonth.value))
      : (hold.firstSeen ?? hold.start),
  );
  return { year, answer, since: days.sort().at(-1) ?? '', reasons: holds.map((hold) => told(hold, level)) };
};

/**
 * Did the coatings of a zone hold longer than `level` months (or less long) so many seasons in a row, counted from the decision on?
 * A hold is an interval: only one that lies past the line as a whole counts, and a season in between breaks the row.
 */
export const holdTripwire = (
  wire: Tripwire,
  side: 'over' | 'under',
  zone: ZoneHolds | undefined,
  decided: string,
): TripwireState => {
  const { level = 0, times = 1 } = wire;
  const span = Math.max(0, (zone?.spans.length ?? 1) - 1);
  const holds = zone?.holds.filter((hold) => hold.start >= decided && hold.span === span) ?? [];
  const untold = zone?.noHolds.filter(({ start }) => start >= decided && /^\d{4}-/.test(start)) ?? [];
  const years = [...new Set([...holds, ...untold].map(({ start }) => start.slice(0, 4)))].sort();
  if (holds.length === 0) return cannotTell(because('tripwire: no holds known', { zone: wire.zone ?? '' }));
  const seasons = years.map((year) =>
    seasonOf(
      year,
      holds.filter(({ start }) => start.startsWith(year)),
      level,
      side,
    ),
  );
  let run = 0;
  let reached: Season | undefined;
  let longest = 0;
  for (const season of seasons) {
    run = season.answer === 'yes' ? run + 1 : 0;
    longest = Math.max(longest, run);
    if (run >= times) reached = season;
  }
  const reasons = [
    ...seasons.slice(-Math.max(times, 2)).flatMap((season) => season.reasons),
    because('tripwire: seasons seen', { seen: Math.min(longest, times), times }),
  ];
  return reached ? met(reached.since, ...reasons) : notMet(...reasons);
};
