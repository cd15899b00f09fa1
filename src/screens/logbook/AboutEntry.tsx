import { metalLedger } from '../../engine/care';
import type { SculptureRecord } from '../../engine/record';
import { type CautionPlace, cautionsAt, treatmentOf } from '../../engine/trade';
import { w } from '../../words';
import { Notice } from '../parts';

const words = w.logbook;

const placesOf = (type: string): readonly CautionPlace[] => {
  const row = treatmentOf(type);
  if (row?.hot) return ['hot work'];
  if (row?.coats) return ['wax'];
  return type === 'wash' ? ['wash'] : [];
};

interface AboutEntryProps {
  readonly type: string;
  readonly record: SculptureRecord;
  /** The entry that is open: it does not count as one before itself. */
  readonly entry: string | undefined;
}

/** What goes with this sort of work: whom to ask, what it does to metal and series, what to take care of. */
export function AboutEntry({ type, record, entry }: AboutEntryProps) {
  const row = treatmentOf(type);
  const cautions = placesOf(type).flatMap((place) => cautionsAt(place));
  const others = { ...record, treatments: record.treatments.filter(({ thing }) => thing !== entry) };
  const before = row?.takes === 'metal' ? metalLedger(others).most : 0;
  return (
    <>
      {row?.askConservator && (
        <Notice kind="stop" title={words.ask}>
          <p>{words.askWhat}</p>
        </Notice>
      )}
      {before > 0 && (
        <Notice kind="caution" title={words.nthStrip(w.careDay.metal.nth(before + 1))}>
          <p>{words.nthStripWhat}</p>
        </Notice>
      )}
      {row?.breaksSeries && (
        <Notice title={words.breaks}>
          <p>{words.breaksWhat}</p>
        </Notice>
      )}
      {cautions.length > 0 && (
        <Notice kind="caution" title={words.take}>
          <ul>
            {cautions.map(({ id, text }) => (
              <li key={id}>{text}</li>
            ))}
          </ul>
        </Notice>
      )}
    </>
  );
}
