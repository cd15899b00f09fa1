import { w } from '../../words';
import { Reasons } from '../parts/Reasons';
import type { YearRow } from './yearRows';

const words = w.year;

/** What is proposed for a work, and why. */
export function Why({ row: { proposal } }: { readonly row: YearRow }) {
  if (!proposal) return null;
  const { survey, waxes, reasons } = proposal;
  return (
    <div className="stack tight year-why">
      <p className="strong">
        {words.surveys[survey]}, {words.proposed}
      </p>
      <Reasons reasons={reasons.survey} />
      <p className="strong">
        {words.waxes}: {words.waxCount(waxes)}, {words.proposed}
      </p>
      <Reasons reasons={reasons.waxes} />
      <Reasons reasons={reasons.lift} />
    </div>
  );
}
