import { alarmAt, type TemperatureLog } from '../../engine/heat';
import { measureNumber, w } from '../../words';
import { Axes } from '../parts/charts/Axes';
import { straightScale } from '../parts/charts/straightScale';
import { unitsInRem, useWidth } from '../parts/charts/useWidth';
import '../parts/charts/charts.css';

const words = w.hotWork.readings;
const height = 220;
const margin = { top: 16, right: 16, bottom: 32, left: 64 };

interface ReadingChartProps {
  readonly name: string;
  readonly log: TemperatureLog;
  /** Degrees Celsius. */
  readonly most: number | undefined;
}

/** How warm it got over the day, under the line of its limit and the one of its alarm. The numbers stand in the table below. */
export function ReadingChart({ name, log, most }: ReadingChartProps) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const { rows, highest } = log;
  if (rows.length < 2 || !highest) return null;
  return (
    <div ref={ref} className="chart-drawing">
      <svg
        role="img"
        aria-label={words.drawn(name, rows.length, measureNumber('temperature', highest.celsius, 1))}
        viewBox={`0 0 ${width} ${height}`}
        width={`${width / unitsInRem}rem`}
        className="chart-svg"
      >
        <Drawing log={log} most={most} width={width} />
      </svg>
    </div>
  );
}

function Drawing({ log: { rows }, most, width }: Omit<ReadingChartProps, 'name'> & { readonly width: number }) {
  const minutes = rows.map(({ minute }) => minute);
  const degrees = rows.map(({ celsius }) => celsius);
  const x = straightScale([Math.min(...minutes), Math.max(...minutes)], [margin.left, width - margin.right]);
  const [low, high] = [Math.min(0, ...degrees), Math.max(most ?? 0, ...degrees) * 1.08];
  const y = straightScale([low, high], [height - margin.bottom, margin.top]);
  const spots = [...new Set(rows.map(({ spot }) => spot))];
  return (
    <>
      <Axes
        x={x}
        y={y}
        xTicks={hours(Math.min(...minutes), Math.max(...minutes), width < 460 ? 60 : 30)}
        yTicks={y.ticks(5)}
        xText={timeText}
        yText={(value) => words.value(measureNumber('temperature', value, 0))}
      />
      {most !== undefined &&
        [most, alarmAt(most)].map((limit) => (
          <line
            key={limit}
            className="series-level"
            x1={margin.left}
            x2={width - margin.right}
            y1={y(limit)}
            y2={y(limit)}
          />
        ))}
      {spots.map((spot) => {
        const own = rows.filter((row) => row.spot === spot);
        const line = own.map((row) => `${x(row.minute)},${y(row.celsius)}`).join(' ');
        return (
          <g key={spot}>
            <polyline className="series-line" points={line} />
            {own.map((row) => (
              <circle
                key={`${row.time} ${row.celsius}`}
                className="series-point"
                cx={x(row.minute)}
                cy={y(row.celsius)}
                r={4}
              />
            ))}
          </g>
        );
      })}
    </>
  );
}

const timeText = (minute: number): string =>
  `${String(Math.floor(minute / 60) % 24).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;

/** Round times within the day's readings. */
const hours = (from: number, to: number, every: number): number[] => {
  const first = Math.ceil(from / every) * every;
  return Array.from({ length: Math.max(0, Math.floor((to - first) / every) + 1) }, (_, i) => first + i * every);
};
