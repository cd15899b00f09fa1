import { Link } from 'wouter';
import type { SculptureRecord } from '../../engine/record';
import { date, w } from '../../words';
import { OnIcon, Section } from '../parts';
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
              <span className="grow">{words.roundRow(roundTypeName(body.type), date(body.date))}</span>
              {!body.ended && <span className="strong">{words.roundOpen}</span>}
              <OnIcon />
            </Link>
          </li>
        ))}
      </ul>
    </Section>
  );
}
