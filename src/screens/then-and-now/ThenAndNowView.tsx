import { Link } from 'wouter';
import type { ThenAndNow } from '../../engine/change';
import type { SculptureRecord } from '../../engine/record';
import { treatmentOf } from '../../engine/trade';
import { date, type NameOfThing, number, sayReason, w } from '../../words';
import { Notice, Section } from '../parts';
import { pathTo } from '../shell';
import { ChangedZones } from './ChangedZones';
import { Growth } from './Growth';
import { InShort } from './InShort';
import '../parts/plainTable.css';
import './thenAndNow.css';

const words = w.thenAndNow;

export interface ThenAndNowViewProps {
  readonly record: SculptureRecord;
  readonly answer: ThenAndNow;
  readonly nameOf: NameOfThing;
}

/** All of one comparison, as it stands on screen and on paper. */
export function ThenAndNowView({ record, answer, nameOf }: ThenAndNowViewProps) {
  return (
    <>
      <Alike answer={answer} nameOf={nameOf} />
      <InShort answer={answer} nameOf={nameOf} />
      <Between answer={answer} />
      <Growth active={answer.sculpture.active} nameOf={nameOf} />
      <ChangedZones record={record} answer={answer} nameOf={nameOf} />
      <HowSure answer={answer} nameOf={nameOf} />
    </>
  );
}

function Alike({ answer, nameOf }: Omit<ThenAndNowViewProps, 'record'>) {
  const { ok, reasons } = answer.comparable;
  if (ok) return <p className="soft">{words.alike}</p>;
  return (
    <Notice kind="caution" title={words.notAlike}>
      <ul>
        {reasons.map((reason) => (
          <li key={reason.code}>{sayReason(reason, nameOf)}</li>
        ))}
      </ul>
      <p>{words.notAlikeWhat}</p>
    </Notice>
  );
}

function Between({ answer }: { readonly answer: ThenAndNow }) {
  const { between } = answer;
  return (
    <Section title={words.between}>
      {between.length === 0 ? (
        <p className="soft">{words.betweenNone}</p>
      ) : (
        <>
          <ul>
            {between.map(({ treatment, type, date: day, sure, breaksSeries }) => (
              <li key={treatment}>
                {words.doneOn(treatmentOf(type)?.name ?? type, date(day))}
                {!sure && <> {words.perhaps}</>}
                {breaksSeries && <> {words.breaks}</>}
              </li>
            ))}
          </ul>
          <p className="soft">{words.notByItself}</p>
        </>
      )}
    </Section>
  );
}

/** What of the page's own reasons says whose eyes looked. */
const ofEyes: ReadonlySet<string> = new Set(['change: own eye', 'change: other surveyor', 'change: surveyor not said']);

function HowSure({ answer, nameOf }: Omit<ThenAndNowViewProps, 'record'>) {
  const { comparisons, expectedByChance, findings, reasons } = answer;
  const known = reasons.some(({ code }) => code === 'change: own eye');
  return (
    <Section title={words.sure}>
      <p>
        {comparisons === 0 ? words.nothingToCompare : words.falseOnes(comparisons, number(expectedByChance, 1))}
        {findings.some(({ aloneCouldBeChance }) => aloneCouldBeChance) && <> {words.aloneWhat}</>}
      </p>
      {reasons
        .filter(({ code }) => ofEyes.has(code))
        .map((reason) => (
          <p key={`${reason.code} ${reason.params.surveyor ?? ''}`}>{sayReason(reason, nameOf)}</p>
        ))}
      {!known && comparisons > 0 && (
        <p className="soft">
          {w.eyeCheck.assumedHere}{' '}
          <Link href={pathTo.eyeCheck()} className="not-printed">
            {w.eyeCheck.invite}
          </Link>
        </p>
      )}
    </Section>
  );
}
