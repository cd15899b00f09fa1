import { overfullDays, type Time, timeOfAll } from '../../engine/year';
import { sayReason, w } from '../../words';
import { Notice, Section } from '../parts';
import { Fold } from '../parts/Fold';
import { Reasons } from '../parts/Reasons';
import type { YearAtHand } from './useYear';

const words = w.year;

/** The hours of the year, from her own pace where the record tells it. */
export function TimeOfYear({ atHand: { rows, around } }: { readonly atHand: YearAtHand }) {
  const times = rows.flatMap(({ time }) => time ?? []);
  if (times.length < rows.length) return null;
  const full = overfullDays(
    rows.flatMap(({ row, time }) => (time ? { day: row?.day, waxes: row?.waxes ?? 0, time } : [])),
  );
  const { survey, wax } = timeOfAll(times, around.pace, around.labour);
  const line = (name: string, time: Time) => (
    <p>
      {name}: <span className="strong figures">{words.lasting(time.value)}</span>{' '}
      <span className="soft figures">({words.lastingRange(time.low, time.high)})</span>
    </p>
  );
  return (
    <Section title={words.timeTitle} lead={words.timeWhat}>
      {line(words.timeSurvey, survey)}
      {line(words.timeWax, wax)}
      {full.map((reason) => (
        <Notice key={sayReason(reason)} kind="caution" title={sayReason(reason)} />
      ))}
      <Fold show={words.rests} hide={words.restsHide} alsoOnPaper>
        <Reasons reasons={[...survey.reasons, ...wax.reasons]} />
      </Fold>
    </Section>
  );
}
