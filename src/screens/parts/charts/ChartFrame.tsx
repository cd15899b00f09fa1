import type { ReactNode } from 'react';
import { w } from '../../../words';
import { Fold } from '../Fold';
import { unitsInRem, useWidth } from './useWidth';
import '../plainTable.css';
import './charts.css';

export interface LegendRow {
  readonly mark: ReactNode;
  readonly word: string;
}

interface ChartFrameProps {
  readonly title: string;
  /** Where a heading right above says the same: for ears only. */
  readonly titleUnseen?: boolean;
  /** For those who do not see the drawing: what is in it. */
  readonly label: string;
  readonly height: number | ((width: number) => number);
  readonly draw: (width: number, height: number) => ReactNode;
  readonly legend?: readonly LegendRow[];
  /** Numbered remarks under the drawing: what its marks stand for. */
  readonly remarks?: readonly string[];
  readonly table: ReactNode;
}

/** A drawing with its legend and the numbers behind it. Drawn anew for each width, so that its letters stay readable. */
export function ChartFrame({
  title,
  titleUnseen = false,
  label,
  height,
  draw,
  legend = [],
  remarks = [],
  table,
}: ChartFrameProps) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const tall = typeof height === 'number' ? height : height(width);
  return (
    <figure className="chart">
      <figcaption className={titleUnseen ? 'unseen' : 'strong'}>{title}</figcaption>
      <div ref={ref} className="chart-drawing">
        <svg
          role="img"
          aria-label={label}
          viewBox={`0 0 ${width} ${tall}`}
          width={`${width / unitsInRem}rem`}
          className="chart-svg"
        >
          {draw(width, tall)}
        </svg>
      </div>
      {legend.length > 0 && (
        <ul className="bare chart-legend" aria-hidden="true">
          {legend.map(({ mark, word }) => (
            <li key={word}>
              <svg viewBox="0 0 28 14" className="chart-legend-mark" aria-hidden="true">
                {mark}
              </svg>
              {word}
            </li>
          ))}
        </ul>
      )}
      {remarks.length > 0 && (
        <ol className="chart-remarks">
          {remarks.map((remark, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the number is what the mark in the drawing shows
            <li key={i}>{remark}</li>
          ))}
        </ol>
      )}
      <Fold show={w.charts.numbers} hide={w.charts.numbersHide} alsoOnPaper>
        {table}
      </Fold>
    </figure>
  );
}
