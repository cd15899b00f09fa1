import type { OpenFigure } from '../../engine/hold';
import { number, w } from '../../words';

const words = w.holds;

/** Months with their range: "2.9 months (2.2 to 10.6)"; an end that is not known is said to be. */
export function MonthsText({ figure }: { readonly figure: OpenFigure }) {
  const { value, low, high } = figure;
  const range =
    low !== null && high !== null
      ? words.range(number(low, 1), number(high, 1))
      : low !== null
        ? words.monthsOver(number(low, 1))
        : high !== null
          ? words.monthsUpTo(number(high, 1))
          : words.noRange;
  return (
    <span className="figures">
      <span className="strong">{words.monthsFigure(number(value, 1))}</span> <span className="soft">({range})</span>
    </span>
  );
}
