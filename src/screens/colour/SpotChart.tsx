import { isCompared } from '../../engine/colour';
import { dayRange, type Thing } from '../../engine/record';
import { treatmentOf } from '../../engine/trade';
import { figure, w } from '../../words';
import { SeriesChart } from '../parts/charts';
import type { SpotRow } from './seriesOfSpot';

const words = w.colour;

/** A line needs this many points to be worth more than the table. */
const fewest = 3;

interface SpotChartProps {
  /** The latest first. */
  readonly rows: readonly SpotRow[];
  /** What was done at the spot. */
  readonly done: readonly Thing<'treatment'>[];
}

/** How far a spot lies from the colour agreed for it, over the years. Readings that may not be compared are not in it. */
export function SpotChart({ rows, done }: SpotChartProps) {
  const told = [...rows]
    .reverse()
    .flatMap(({ reading, agreed }) =>
      agreed && isCompared(agreed.compared)
        ? [{ day: reading.body.date, agreed: agreed.agreed.thing, ...agreed.compared }]
        : [],
    );
  const [first, last] = [told[0], told.at(-1)];
  if (!first || !last || told.length < fewest) return null;
  const within = done
    .map(({ body }) => ({ type: body.type, day: dayRange(body.date).from }))
    .filter(({ day }) => day > first.day && day <= last.day);
  const breaks = within.filter(({ type }) => treatmentOf(type)?.breaksSeries);
  // A stretch ends where the surface became another one, or another colour was agreed.
  const colours = [...new Set(told.map(({ agreed }) => agreed))];
  const spanOf = (point: (typeof told)[number]) =>
    colours.indexOf(point.agreed) * (breaks.length + 1) + breaks.filter(({ day }) => day <= point.day).length;
  return (
    <SeriesChart
      title={words.chart}
      unit="colour"
      label={words.chartLabel(told.length, figure(first, 'colour').value, figure(last, 'colour').value)}
      points={told.map((point) => ({ ...point, span: spanOf(point) }))}
      breaks={breaks.map(({ day, type }) => ({ day, what: treatmentOf(type)?.name ?? type }))}
      ticks={within.filter(({ type }) => treatmentOf(type)?.coats).map(({ day }) => day)}
    />
  );
}
