import type { ReactNode } from 'react';
import './charts.css';

export interface SignedBar {
  readonly key: string;
  readonly name: ReactNode;
  /** What it adds or takes, in the unit of the whole. */
  readonly value: number;
  readonly text: string;
}

interface SignedBarsProps {
  readonly bars: readonly SignedBar[];
  /** Length of the longest, where several sets are held against each other. */
  readonly most?: number;
  /** Where "nothing" stands in the middle although none of these shrinks: another set of the page does. */
  readonly bothWays?: boolean;
}

const width = 200;
const height = 18;
const margin = 4;

/** One bar to a line with its name and its number: whole to the right for more, open to the left for less. Readable without the bars. */
export function SignedBars({ bars, most, bothWays = false }: SignedBarsProps) {
  const longest = most ?? Math.max(...bars.map(({ value }) => Math.abs(value)));
  const from = bothWays || bars.some(({ value }) => value < 0) ? width / 2 : margin;
  return (
    <ul className="bare signed-bars">
      {bars.map(({ key, name, value, text }) => {
        const long = longest > 0 ? Math.max(1, (Math.abs(value) / longest) * (width - from - margin)) : 1;
        return (
          <li key={key} className="signed-row">
            <span>{name}</span>
            <svg
              className="signed-bar"
              viewBox={`0 0 ${width} ${height}`}
              preserveAspectRatio="none"
              aria-hidden="true"
            >
              <line x1={from} y1="0" x2={from} y2={height} />
              <rect
                className={value < 0 ? 'shrank' : 'grew'}
                x={value < 0 ? from - long : from}
                y="3"
                width={long}
                height={height - 6}
              />
            </svg>
            <span className="figures">{text}</span>
          </li>
        );
      })}
    </ul>
  );
}
