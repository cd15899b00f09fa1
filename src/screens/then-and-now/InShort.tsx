import type { ActiveKind, IndexChange, ThenAndNow, Verdict } from '../../engine/change';
import { type NameOfThing, sayReason, w } from '../../words';
import { FigureText, IndexDial, Section } from '../parts';
import { VerdictMark } from '../parts/VerdictMark';

const words = w.thenAndNow;
const verdicts: readonly Verdict[] = ['worse', 'better', 'no sure change', 'carried', 'not comparable'];
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
                  <FigureText figure={active[kind].earlier} as="m2" />
                </td>
                <td data-head={words.now}>
                  <FigureText figure={active[kind].later} as="m2" />
                </td>
                <td data-head={words.verdictHead}>
                  <VerdictMark verdict={active[kind].verdict} clearly={active[kind].clearly} />
                  {active[kind].aloneCouldBeChance && <span className="chip">{words.alone}</span>}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </Section>
  );
}

function IndexThenNow({ index, nameOf }: { readonly index: IndexChange; readonly nameOf: NameOfThing }) {
  return (
    <figure className="index-then-now">
      <figcaption className="strong">{words.index}</figcaption>
      <div className="row">
        <div className="dial-with-word">
          <IndexDial figure={index.earlier} of={words.thenHead} size="small" />
          <span>{words.thenHead}</span>
        </div>
        <div className="dial-with-word">
          <IndexDial figure={index.later} of={words.now} size="small" />
          <span>{words.now}</span>
        </div>
      </div>
      <VerdictMark verdict={index.verdict} clearly={index.clearly} />
      {index.aloneCouldBeChance && <span className="chip">{words.alone}</span>}
      <ul className="reasons">
        {index.reasons.map((reason, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: one code may stand there more than once
          <li key={i}>{sayReason(reason, nameOf)}</li>
        ))}
      </ul>
    </figure>
  );
}
