import { useId } from 'react';
import { type BiasCurve, type Patch, saidAt } from '../../engine/eye';
import { w } from '../../words';

const words = w.eyeCheck;

const size = 340;
const edge = { left: 46, top: 12, right: 12, bottom: 46 } as const;
const ticks = [0.005, 0.02, 0.05, 0.1, 0.2, 0.4, 0.6, 0.8, 0.95];
const from = 0.004;
const to = 0.96;

const logit = (p: number): number => Math.log(p / (1 - p));
const along = (p: number): number => (logit(p) - logit(from)) / (logit(to) - logit(from));
const x = (p: number): number => edge.left + along(p) * (size - edge.left - edge.right);
const y = (p: number): number => size - edge.bottom - along(p) * (size - edge.top - edge.bottom);
const at = (p: number, q: number): string => `${x(p).toFixed(1)} ${y(q).toFixed(1)}`;
const percent = (p: number): string => String(Math.round(p * 1000) / 10);

/** Shares at which the curve is drawn, even on the axis. */
const places = Array.from({ length: 25 }, (_, i) => {
  const z = logit(0.005) + (i / 24) * (logit(0.95) - logit(0.005));
  return 1 / (1 + Math.exp(-z));
});

/** What was said against what is true, both axes stretched at their ends as the sums see them. The numbers stand in the tables behind it. */
export function BiasDrawing({ curve, patches }: { readonly curve: BiasCurve; readonly patches: readonly Patch[] }) {
  const clip = useId();
  const points = places.map((p) => ({ p, ...saidAt(curve, p) }));
  const band = [...points.map(({ p, high }) => at(p, high)), ...points.toReversed().map(({ p, low }) => at(p, low))];
  return (
    <svg className="eye-curve" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={words.curveTitle}>
      {ticks.map((p) => (
        <g key={p}>
          <path className="eye-grid" d={`M${at(p, from)}L${at(p, to)}M${at(from, p)}L${at(to, p)}`} />
          <text className="eye-tick" x={x(p)} y={size - edge.bottom + 18} textAnchor="middle">
            {percent(p)}
          </text>
          <text className="eye-tick" x={edge.left - 6} y={y(p) + 5} textAnchor="end">
            {percent(p)}
          </text>
        </g>
      ))}
      <text className="eye-axis" x={(size + edge.left) / 2} y={size - 6} textAnchor="middle">
        {words.axisTrue}
      </text>
      <text
        className="eye-axis"
        transform={`translate(13 ${(size - edge.bottom) / 2}) rotate(-90)`}
        textAnchor="middle"
      >
        {words.axisSaid}
      </text>
      <clipPath id={clip}>
        <rect x={x(from)} y={y(to)} width={x(to) - x(from)} height={y(from) - y(to)} />
      </clipPath>
      <path className="eye-band" clipPath={`url(#${clip})`} d={`M${band.join('L')}Z`} />
      <path className="eye-true" d={`M${at(from, from)}L${at(to, to)}`} />
      <path
        className="eye-line"
        clipPath={`url(#${clip})`}
        d={`M${points.map(({ p, value }) => at(p, value)).join('L')}`}
      />
      {patches.map(({ truth, said }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: patches have no name of their own, and their order does not change
        <circle key={i} className="eye-point" cx={x(truth)} cy={y(said.value)} r={4} />
      ))}
    </svg>
  );
}
