import { bandAt, type HoldCurve } from '../../engine/hold';
import { stepsOf } from '../../engine/life';
import { LifeCurve } from '../parts/charts';

/** Points of a fitted curve: enough for a smooth line. */
const points = 48;
/** The curve goes on a little past the last look. */
const beyond = 1.1;

const open = (months: number): number | null => (Number.isFinite(months) ? months : null);

/** The drawing of the share that lasts; nothing where there are too few zones for one. */
export function GroupCurve({ curve, title }: { readonly curve: HoldCurve; readonly title: string }) {
  const { turnbull, fit, median } = curve;
  if (!turnbull) return null;
  const steps = stepsOf(turnbull).map(({ from, to, low, high }) => ({ from, to: open(to), low, high }));
  const last = Math.max(1, ...steps.flatMap(({ from, to }) => [from, to ?? 0])) * beyond;
  const line = fit
    ? Array.from({ length: points + 1 }, (_, i) => {
        const months = (last * i) / points;
        const value = Math.exp(-((months / fit.scale.value) ** fit.shape.value));
        return { months, value, ...bandAt(fit, months) };
      })
    : [];
  return (
    <LifeCurve
      title={title}
      steps={steps}
      masses={turnbull.masses.map(({ left, right, mass }) => ({ left, right: open(right), mass }))}
      fit={line}
      median={median?.value ?? null}
    />
  );
}
