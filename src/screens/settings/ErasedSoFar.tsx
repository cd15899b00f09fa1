import { erasedSoFar } from '../../actions';
import { date, w } from '../../words';
import { Section } from '../parts';
import { LongList } from '../parts/LongList';
import { useDesk, useQuestion } from '../shell';

const words = w.erasing;

/** What was erased, when and why: so that nobody wonders what is missing. Nothing where nothing was. */
export function ErasedSoFar() {
  const rows = useQuestion(erasedSoFar(useDesk()));
  if (!rows || rows.length === 0) return null;
  return (
    <Section title={words.soFar}>
      <LongList
        className="stack"
        rows={rows}
        show={({ thing, of, day, reason }) => (
          <li key={thing}>{words.soFarRow(words.soFarOf[of], date(day), reason)}</li>
        )}
      />
    </Section>
  );
}
