import { useId } from 'react';
import type { FindingChange, ZoneChange } from '../../engine/change';
import type { Thing } from '../../engine/record';
import { type NameOfThing, number, w, figure as written } from '../../words';
import { Reasons } from '../parts/Reasons';
import { VerdictMark } from '../parts/VerdictMark';
import { FindingCompared } from './FindingCompared';

const words = w.thenAndNow;

interface ZoneComparedProps {
  readonly zone: Thing<'zone'> | undefined;
  readonly change: ZoneChange;
  readonly findings: readonly FindingChange[];
  readonly nameOf: NameOfThing;
  /** What did not surely change: shorter. */
  readonly quiet?: boolean;
}

const indexWritten = (figure: ZoneChange['earlier']): string => {
  if (!figure) return w.parts.notKnown;
  const { value, range } = written(figure);
  return words.withRange(value, range);
};

/** One zone over the two rounds: its own verdict, then its findings side by side. */
export function ZoneCompared({ zone, change, findings, nameOf, quiet = false }: ZoneComparedProps) {
  const id = useId();
  const { earlier, later, smallest, verdict, clearly, aloneCouldBeChance } = change;
  return (
    <article className={quiet ? 'zone-compared quiet' : 'zone-compared card'} aria-labelledby={id}>
      <header className="zone-compared-head">
        <span className="letter" aria-hidden="true">
          {zone?.body.letter ?? '?'}
        </span>
        <div className="grow">
          <h3 id={id}>
            <span className="unseen">{words.zoneLetter(zone?.body.letter ?? '?')}</span>
            {zone?.body.name ?? nameOf(change.zone) ?? words.zone}
          </h3>
          {(earlier || later) && (
            <p className="soft small figures">
              {words.zoneIndex(indexWritten(earlier), indexWritten(later))}
              {smallest !== null && !quiet && <>. {words.smallestIndex(number(smallest, 1))}</>}
            </p>
          )}
        </div>
        <div className="zone-compared-verdict">
          <VerdictMark verdict={verdict} clearly={clearly} />
          {aloneCouldBeChance && <span className="chip">{words.alone}</span>}
        </div>
      </header>
      {findings.length > 0 && (
        <table className="plain-table cards findings-compared">
          <thead>
            <tr>
              <th scope="col">{words.finding}</th>
              <th scope="col">{words.thenHead}</th>
              <th scope="col">{words.now}</th>
              <th scope="col">{words.verdictHead}</th>
            </tr>
          </thead>
          <tbody>
            {findings.map((finding) => (
              <FindingCompared key={finding.series} finding={finding} nameOf={nameOf} />
            ))}
          </tbody>
        </table>
      )}
      {findings.length === 0 && <Reasons reasons={change.reasons} nameOf={nameOf} />}
    </article>
  );
}
