import type { PaperSource } from '../../engine/reckoning';
import { yearVerdicts } from '../../engine/trade';
import { date, tripwireText, w } from '../../words';
import { nameOfWork, thingsIn, thingsOfAll, workOf } from '../reading';
import { standingOf } from './letterWatch';
import { namesIn } from './namesIn';
import type { WorkInYear } from './workInYear';

const words = w.paperYear;
export const mostWanted = 3;

/** What the record asks to be decided, the most pressing first; never more than a director can take in. */
export const wantedOf = (source: PaperSource, works: readonly WorkInYear[], year: number): readonly string[] => {
  const names = namesIn(source);
  const met = standingOf(source).filter(({ open, word }) => open && word === 'met');
  const asked = new Set(met.map(({ decision }) => decision.thing));
  const wires = met.map(({ decision, tripwire }) => words.wire(decision.body.title, tripwireText(tripwire, names)));
  const reviews = thingsOfAll(source, 'decision')
    .filter(
      ({ thing, body }) =>
        !asked.has(thing) && !body.replacedBy && body.review !== undefined && body.review <= `${year + 1}-03-31`,
    )
    .sort((a, b) => (a.body.review ?? '').localeCompare(b.body.review ?? ''))
    .map(({ body }) => words.review(body.title, date(body.review ?? '')));
  const money = source.works.flatMap((work) =>
    thingsIn(work.within, 'campaign')
      .filter(({ body }) => body.step === 'money' && !body.givenUp)
      .map(({ body }) => words.money(body.title, nameOfWork(workOf(source, body.sculpture) ?? work))),
  );
  const verdicts = works.flatMap(({ work, verdict }) =>
    verdict && (verdict.verdict === 'campaign' || verdict.verdict === 'ask a conservator')
      ? [
          words.verdict(
            nameOfWork(work),
            yearVerdicts.find(({ id }) => id === verdict.verdict)?.name ?? verdict.verdict,
            verdict.why,
          ),
        ]
      : [],
  );
  // What stands open today asks nothing of a year that is over.
  const open = source.today.startsWith(String(year)) ? [...wires, ...reviews, ...money] : [];
  return [...new Set([...open, ...verdicts])].slice(0, mostWanted);
};
