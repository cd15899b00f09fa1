import type { Thing } from '../record';
import { type PackedFor, type PackingItem, packingItems } from '../trade';

/** What one work is visited for on a day. */
export interface DayOfWork {
  readonly work: string;
  readonly zones: readonly Thing<'zone'>[];
  readonly survey: 'full' | 'look' | 'none';
  readonly wash: boolean;
  readonly wax: boolean;
  readonly stations: number;
  readonly squares: number;
  readonly inserts: number;
  /** How the work is got at was written down. */
  readonly access: boolean;
  /** Metres of water to stand in, where known. */
  readonly water?: number | undefined;
}

export interface Packed extends Pick<PackingItem, 'id' | 'name'> {
  /** What asked for it, in the order of the list of reasons. */
  readonly because: readonly PackedFor[];
  /** Works that asked for it; none named: the day itself. */
  readonly works: readonly string[];
  readonly count?: number;
}

const asks = (day: DayOfWork): ReadonlySet<PackedFor> => {
  const hands = day.survey === 'full' || day.wash || day.wax;
  const reach = (...ids: readonly string[]): boolean => hands && day.zones.some(({ body }) => ids.includes(body.reach));
  const wet = day.zones.some(({ body }) => body.exposure.includes('waterline')) || (day.water ?? 0) > 0;
  const asked: readonly (readonly [PackedFor, boolean])[] = [
    ['survey', day.survey === 'full'],
    ['look', day.survey === 'look'],
    ['stations', day.survey === 'full' && day.stations > 0],
    ['squares', day.survey === 'full' && day.squares > 0],
    ['step', reach('step')],
    ['ladder', reach('ladder')],
    ['lift', reach('lift', 'scaffold')],
    ['water', hands && wet],
    ['wash', day.wash],
    ['wax', day.wax],
    ['inserts', hands && day.inserts > 0],
    ['access', day.access],
  ];
  return new Set(asked.filter(([, so]) => so).map(([what]) => what));
};

/** What to take along on a day, in the order of the trade's list, each with what asks for it. Nothing where no work is visited. */
export const packingOf = (days: readonly DayOfWork[]): readonly Packed[] => {
  if (days.length === 0) return [];
  const asked = days.map((day) => ({ day, asks: asks(day) }));
  return packingItems.flatMap(({ id, name, for: wanted, counted }) => {
    const by = asked.filter((one) => wanted.some((what) => one.asks.has(what)));
    const always = wanted.includes('every day');
    if (!always && by.length === 0) return [];
    const why = wanted.filter((what) => what === 'every day' || by.some((one) => one.asks.has(what)));
    const count = {
      stations: by.reduce((sum, { day }) => sum + day.stations, 0),
      squares: by.reduce((sum, { day }) => sum + day.squares, 0),
      works: by.length,
    };
    return [
      {
        id,
        name,
        because: why,
        works: always ? [] : by.map(({ day }) => day.work),
        ...(counted ? { count: count[counted] } : {}),
      },
    ];
  });
};
