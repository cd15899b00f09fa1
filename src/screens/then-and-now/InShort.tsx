import type { ActiveKind, IndexChange, ThenAndNow, Verdict } from '../../engine/change';
import type { Figure } from '../../engine/record';
import { area, type NameOfThing, number, w } from '../../words';
import { FigureText, IndexDial, Section } from '../parts';
import { Reasons } from '../parts/Reasons';
import { VerdictMark } from '../parts/VerdictMark';

const words = w.thenAndNow;
const verdicts: readonly Verdict[] = ['worse', 'better', 'no sure change', 'carried', 'not comparable'];
/** What the page says in sentences of its own. */
const saidElsewhere: ReadonlySet<string> = new Set([
  'change: zones compared',
  'change: done between',
  'change: perhaps done between',
]);
const activeKinds: readonly ActiveKind[] = ['green', 'bare', 'scale'];

/** What the whole page comes to: how many of each verdict, the index then and now, and the square metres. */
export function InShort({ answer, nameOf }: { readonly answer: ThenAndNow; readonly nameOf: NameOfThing }) {
  const { index, active, zonesBoth, zonesAll } = answer.sculpture;
  const counts = verdicts
    .map((verdict) => ({ verdict, n: answer.findings.filter((finding) => finding.verdict === verdict).length }))
    .filter(({ n }) => n > 0);
  return (
    <Section title={words.headline}>
      <ul className="bare verdict-counts">
        {counts.map(({ verdict, n }) => (
          <li key={verdict}>
            <VerdictMark verdict={verdict}>{words.counts[verdict](n)}</VerdictMark>
          </li>
        ))}
        {counts.length === 0 && <li className="soft">{words.nothingToCompare}</li>}
      </ul>
      <p>{words.zonesBoth(zonesBoth, zonesAll)}</p>
      <div className="then-now-figures">
        <IndexThenNow index={index} nameOf={nameOf} />
        <table className="plain-table cards">
          <caption>{words.activeArea}</caption>
          <thead>
            <tr>
              <th scope="col">{words.sort}</th>
              <th scope="col">{words.thenHead}</th>
              <th scope="col">{words.now}</th>
              <th scope="col">{words.verdictHead}</th>
            </tr>
          </thead>
          <tbody>
            {activeKinds.map((kind) => (
              <tr key={kind}>
                <th scope="row">{words.active[kind]}</th>
                <td data-head={words.thenHead}>
                  <ActiveArea figure={active[kind].earlier} />
                </td>
                <td data-head={words.now}>
                  <ActiveArea figure={active[kind].later} />
                </td>
                <td data-head={words.verdictHead}>
                  <VerdictMark verdict={active[kind].verdict} clearly={active[kind].clearly} />
                  {active[kind].aloneCouldBeChance && <span className="chip">{words.alone}</span>}
                  {active[kind].smallest !== null && (
                    <span className="soft small smallest">{words.smallestArea(area(active[kind].smallest))}</span>
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </Section>
  );
}

/** Nothing seen is told in a word: "0.00 (0.00 to 0.00)" says no more. */
function ActiveArea({ figure }: { readonly figure: Figure }) {
  return figure.high === 0 ? <span className="soft">{words.noneSeen}</span> : <FigureText figure={figure} as="m2" />;
}

function IndexThenNow({ index, nameOf }: { readonly index: IndexChange; readonly nameOf: NameOfThing }) {
  return (
    <figure className="index-then-now">
      <figcaption className="strong">{words.index}</figcaption>
      <div className="dials">
        {[
          { word: words.thenHead, figure: index.earlier },
          { word: words.now, figure: index.later },
        ].map(({ word, figure }) => (
          <div key={word} className="dial-with-word">
            <span className="strong">{word}</span>
            <IndexDial figure={figure} of={word} />
            <FigureText figure={figure} />
          </div>
        ))}
      </div>
      <VerdictMark verdict={index.verdict} clearly={index.clearly} />
      {index.aloneCouldBeChance && <span className="chip">{words.alone}</span>}
      {index.smallest !== null && <p className="soft small">{words.smallestIndex(number(index.smallest, 1))}</p>}
      <Reasons reasons={index.reasons.filter(({ code }) => !saidElsewhere.has(code))} nameOf={nameOf} />
    </figure>
  );
}
