import { curveOf, planWithin, type Weighed } from '../../engine/budget';
import { type Money, moneyOf, unitsOf } from '../../engine/money';
import { area, measure, number, roundMoney, w } from '../../words';
import { Section } from '../parts';
import { Axes } from '../parts/charts/Axes';
import { ChartFrame } from '../parts/charts/ChartFrame';
import { linePath } from '../parts/charts/paths';
import { straightScale } from '../parts/charts/straightScale';

const words = w.budget;
const height = 280;
const margin = { top: 16, right: 20, bottom: 48, left: 60 };
/** Sums in the table. */
const rowsShown = 12;

interface UndoneCurveProps {
  readonly weighed: Weighed;
  /** The sum tried. */
  readonly at: Money | undefined;
}

/** What is left undone, falling with the sum: steep where money does most. */
export function UndoneCurve({ weighed, at }: UndoneCurveProps) {
  const { currency } = weighed;
  const most = unitsOf({ minor: weighed.front.at(-1)?.cost ?? 0, currency });
  if (most === 0) return null;
  const undoneFor = (sum: Money): number | undefined => {
    const plan = planWithin(weighed, sum);
    return 'undone' in plan ? plan.undone.value : undefined;
  };
  const sums = Array.from({ length: rowsShown + 1 }, (_, i) => moneyOf((most * i) / rowsShown, currency));
  return (
    <Section title={words.curve}>
      <ChartFrame
        title={words.curveLabel}
        titleUnseen
        label={words.curveLabel}
        height={height}
        draw={(width) => <Line weighed={weighed} most={most} at={at} undone={at && undoneFor(at)} width={width} />}
        table={
          <table className="plain-table">
            <caption className="unseen">{words.curveLabel}</caption>
            <thead>
              <tr>
                <th scope="col">{words.curveSum}</th>
                <th scope="col" className="of-number">
                  {words.curveUndone}
                </th>
              </tr>
            </thead>
            <tbody>
              {sums.map((sum) => (
                <tr key={sum.minor}>
                  <th scope="row">{roundMoney(sum)}</th>
                  <td className="of-number">{area(undoneFor(sum) ?? 0)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        }
      />
    </Section>
  );
}

interface LineProps extends UndoneCurveProps {
  readonly most: number;
  readonly undone: number | undefined;
  readonly width: number;
}

function Line({ weighed, most, at, undone, width }: LineProps) {
  const points = curveOf(weighed).map((point) => ({ sum: unitsOf(point.budget), undone: point.undone }));
  const x = straightScale([0, most], [margin.left, width - margin.right]);
  const y = straightScale([0, (points[0]?.undone ?? 1) * 1.05], [height - margin.bottom, margin.top]);
  // Between two places nothing changes: the line goes level and then down.
  const steps = points.flatMap((point, i) => {
    const before = points[i - 1];
    return [...(before ? [[x(point.sum), y(before.undone)] as const] : []), [x(point.sum), y(point.undone)] as const];
  });
  const here = at && undone !== undefined ? { x: x(Math.min(unitsOf(at), most)), y: y(undone) } : undefined;
  return (
    <>
      <Axes
        x={x}
        y={y}
        xTicks={x.ticks(width < 460 ? 3 : 8)}
        yTicks={y.ticks(5)}
        xText={(value) => number(value, 0)}
        yText={(value) => measure('area', value, 1)}
        xName={words.curveSum}
      />
      <path className="series-line" d={linePath(steps)} />
      {here && (
        <>
          <circle className="series-point open" cx={here.x} cy={here.y} r="6" />
          <text className="level-text" x={here.x} y={here.y - 12} textAnchor={here.x > width / 2 ? 'end' : 'start'}>
            {words.here}
          </text>
        </>
      )}
    </>
  );
}
