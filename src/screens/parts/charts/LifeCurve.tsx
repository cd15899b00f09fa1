import { useId } from 'react';
import { number, share, w } from '../../../words';
import { Axes } from './Axes';
import { ChartFrame } from './ChartFrame';
import { Hatch } from './Hatch';
import { linePath } from './paths';
import { straightScale } from './straightScale';

const words = w.charts;

export interface LifeCurveProps {
  readonly title: string;
  /** Share still clear over stretches of months; `to` null past the last look. */
  readonly steps: readonly {
    readonly from: number;
    readonly to: number | null;
    readonly low: number;
    readonly high: number;
  }[];
  /** Where the mass lies: for the table. */
  readonly masses: readonly { readonly left: number; readonly right: number | null; readonly mass: number }[];
  /** The fitted curve, point by point; empty where no fit stands. */
  readonly fit: readonly {
    readonly months: number;
    readonly value: number;
    readonly low: number;
    readonly high: number;
  }[];
  readonly median: number | null;
}

const height = 280;
const margin = { top: 12, right: 16, bottom: 48, left: 56 };

/** The share of coatings still clear as months go by: in steps as seen, and as a curve where one can be fitted. */
export function LifeCurve(props: LifeCurveProps) {
  const { title, steps, masses, fit, median } = props;
  if (steps.length === 0) return <p className="soft">{words.nothing}</p>;
  return (
    <ChartFrame
      title={title}
      label={median === null ? title : `${title}: ${words.median(number(median, 1))}.`}
      height={height}
      draw={(width) => <LifeDrawing {...props} width={width} />}
      legend={[
        { word: words.legendSteps, mark: <path className="life-steps" d="M1 3H14V11H27" /> },
        ...(fit.length > 0
          ? [{ word: words.legendFit, mark: <path className="life-fit" d="M1 3C12 3 16 11 27 11" /> }]
          : []),
      ]}
      table={
        <table className="plain-table">
          <caption className="unseen">{title}</caption>
          <thead>
            <tr>
              <th scope="col">{words.stretch}</th>
              <th scope="col">{words.share}</th>
            </tr>
          </thead>
          <tbody>
            {masses.map(({ left, right, mass }) => (
              <tr key={`${left} ${right}`}>
                <th scope="row">
                  {right === null ? words.never : `${number(left, 1)} ${words.lastTo} ${number(right, 1)}`}
                </th>
                <td>{share(mass)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      }
    />
  );
}

function LifeDrawing({ steps, fit, median, width }: LifeCurveProps & { readonly width: number }) {
  const id = useId();
  const known = steps.flatMap(({ from, to }) => [from, ...(to === null ? [] : [to])]);
  const most = Math.max(1, ...known, ...fit.map(({ months }) => months)) * 1.05;
  const x = straightScale([0, most], [margin.left, width - margin.right]);
  const y = straightScale([0, 1], [height - margin.bottom, margin.top]);
  const curve = (of: 'value' | 'low' | 'high'): string => linePath(fit.map((p) => [x(p.months), y(p[of])] as const));
  const end = (to: number | null): number => x(to ?? most);
  return (
    <>
      <defs>
        <Hatch id={id} />
      </defs>
      <Axes
        x={x}
        y={y}
        xTicks={x.ticks(width < 460 ? 4 : 8)}
        yTicks={[0, 0.25, 0.5, 0.75, 1]}
        xText={(v) => number(v, 1)}
        yText={(v) => share(v)}
        xName={words.month}
      />
      {steps.map(({ from, to, low, high }) =>
        high > low ? (
          <rect
            key={`?${from}`}
            className="life-unknown"
            fill={`url(#${id})`}
            x={x(from)}
            width={Math.max(1, end(to) - x(from))}
            y={y(high)}
            height={y(low) - y(high)}
          />
        ) : (
          <line key={`=${from}`} className="life-steps" x1={x(from)} x2={end(to)} y1={y(low)} y2={y(low)} />
        ),
      )}
      {fit.length > 0 && (
        <>
          <path className="life-band" d={curve('low')} />
          <path className="life-band" d={curve('high')} />
          <path className="life-fit" d={curve('value')} />
        </>
      )}
      {median !== null && median <= most && (
        <path className="life-median" fill="none" d={`M${x(0)} ${y(0.5)}H${x(median)}V${y(0)}`} />
      )}
    </>
  );
}
