import { Link } from 'wouter';
import { roundsDoneTwice } from '../../engine/agreement';
import type { SculptureRecord } from '../../engine/record';
import { date, w } from '../../words';
import { LinkButton, OnIcon, Section } from '../parts';
import { pathTo } from '../shell';
import { roundTypeName } from './SculptureCard';

const words = w.sculptures.work;

/** Every round of the work, the last first; each opens on what it came to. */
export function RoundsOfWork({ record }: { readonly record: SculptureRecord }) {
  return (
    <Section title={words.rounds}>
      {record.rounds.length === 0 && <p className="soft">{words.roundsNone}</p>}
      <ul className="lines bare">
        {[...record.rounds].reverse().map(({ thing, body }) => (
          <li key={thing}>
            <Link href={body.ended ? pathTo.endRound(thing) : pathTo.round(thing)} className="line">
              <span className="grow">
                {words.roundRow(roundTypeName(body.type), date(body.date))}
                {body.fromPaper && <span className="soft"> {w.paperCards.short}</span>}
              </span>
              {!body.ended && <span className="strong">{words.roundOpen}</span>}
              <OnIcon />
            </Link>
          </li>
        ))}
      </ul>
      {roundsDoneTwice(record).length > 0 && (
        <div className="not-printed">
          <LinkButton kind="quiet" to={pathTo.agreement(record.sculpture.thing)}>
            {w.agreement.link}
          </LinkButton>
        </div>
      )}
    </Section>
  );
}
