import { useContext } from 'react';
import type { FindingChange, Naming, Seen } from '../../engine/change';
import { kindOf } from '../../engine/trade';
import { type NameOfThing, number, share, w } from '../../words';
import { Reasons } from '../parts/Reasons';
import { VerdictMark } from '../parts/VerdictMark';
import { CorrectedContext } from './CorrectedContext';
import { MeasuredContext } from './MeasuredContext';

const words = w.thenAndNow;
const { said } = w.round;

/** A step as it is said: its code where this version does not know it. */
const stepSaid = (what: 'severity' | 'activity' | 'count', step: string): string =>
  (said[what] as Readonly<Record<string, string>>)[step] ?? step;

/** What one round saw, in a few words: "20 %, moderate, active". */
const seenWritten = ({ state, coverage, severity, activity, count }: Seen): string => {
  if (state === 'nothing') return words.nothingThere;
  if (state === 'not looked') return words.notLooked;
  const parts = [
    coverage ? share(coverage.value) : undefined,
    count && stepSaid('count', count),
    severity && stepSaid('severity', severity),
    activity && stepSaid('activity', activity),
  ];
  const told = parts.filter((part) => part !== undefined).join(', ');
  if (state === 'carried') return told === '' ? words.carriedShort : words.carriedSeen(told);
  return told === '' ? words.there : told;
};

const namingWritten = (naming: Naming): string => {
  if (naming.what === 'new' || naming.what === 'gone') return words.named[naming.what];
  return words.namedFrom(
    words.named[naming.what],
    stepSaid(naming.what, naming.from),
    stepSaid(naming.what, naming.to),
  );
};

const percent = (fraction: number): string => number(fraction * 100, 1);

const smallestWritten = ({ smallest }: FindingChange): string | undefined => {
  if (!smallest) return undefined;
  const { from, down, up } = smallest;
  if (down !== null && up !== null) return words.smallest(percent(from), percent(down), percent(up));
  if (up !== null) return words.smallestUp(percent(from), percent(up));
  return down === null ? undefined : words.smallestDown(percent(from), percent(down));
};

/** One finding over the two rounds: what stood there, what stands there, the verdict and what it rests on. */
export function FindingCompared({
  finding,
  nameOf,
}: {
  readonly finding: FindingChange;
  readonly nameOf: NameOfThing;
}) {
  const { kind, origin, earlier, later, verdict, clearly, aloneCouldBeChance, named } = finding;
  const corrected = useContext(CorrectedContext);
  const measured = useContext(MeasuredContext);
  const onPhotos = (which: 'earlier' | 'later') =>
    measured(which, finding.zone, kind).map((told) => <Beside key={told} told={told} />);
  const smallest = smallestWritten(finding);
  // Said beside the verdict already, as a mark.
  const reasons = finding.reasons.filter(({ code }) => code !== 'change: alone, could be chance');
  return (
    <tr>
      <th scope="row">
        {kindOf(kind)?.name ?? kind}
        {origin !== 'metal' && <span className="soft small origin">{words.origins[origin]}</span>}
      </th>
      <td data-head={words.thenHead} className="figures">
        {seenWritten(earlier)}
        <Beside told={corrected('earlier', earlier)} />
        {onPhotos('earlier')}
      </td>
      <td data-head={words.now} className="figures">
        {seenWritten(later)}
        <Beside told={corrected('later', later)} />
        {onPhotos('later')}
      </td>
      <td data-head={words.verdictHead} className="verdict-cell">
        <div className="row">
          <VerdictMark verdict={verdict} clearly={clearly} />
          {named.map((naming) => (
            <span className="chip" key={naming.what}>
              {namingWritten(naming)}
            </span>
          ))}
          {aloneCouldBeChance && <span className="chip">{words.alone}</span>}
        </div>
        {smallest && verdict !== 'carried' && <p className="small soft figures">{smallest}</p>}
        <Reasons reasons={reasons} nameOf={nameOf} />
      </td>
    </tr>
  );
}

/** A second figure beside what was entered. */
function Beside({ told }: { readonly told: string | undefined }) {
  return told ? <span className="soft small beside">{told}</span> : null;
}
