import { surveyors } from '../../actions';
import type { Thing } from '../../engine/record';
import { date, w } from '../../words';
import { useDesk, useQuestion } from '../shell';

/** Said wherever a round is told that was seen on paper first: when it was entered, and by whom. */
export function FromPaper({ round: { body } }: { readonly round: Thing<'round'> }) {
  const people = useQuestion(surveyors(useDesk()));
  if (!body.fromPaper) return null;
  const { entered, surveyor } = body.fromPaper;
  const who = people?.find(({ thing }) => thing === surveyor)?.role ?? '';
  return <p className="strong">{w.paperCards.enteredFromPaper(date(entered), who)}</p>;
}
