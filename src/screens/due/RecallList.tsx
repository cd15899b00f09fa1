import type { Recall } from '../../engine/watch';
import { date, type NameOfThing, w } from '../../words';
import { LinkButton, Section } from '../parts';
import { pathTo } from '../shell';

const words = w.due;

/** Whom to call back while a warranty runs, and what came back since. */
export function RecallList({ recall, names }: { readonly recall: readonly Recall[]; readonly names: NameOfThing }) {
  if (recall.length === 0) return null;
  return (
    <Section title={words.recall} lead={words.recallWhat}>
      <ul className="bare recalls">
        {recall.map(({ campaign, sculpture, title, who, until, terms, zones }) => (
          <li key={campaign} className="card stack tight">
            <h3>{who ?? words.recallNobody}</h3>
            <p>{[names(sculpture), title, words.recallUntil(date(until))].filter(Boolean).join(' · ')}</p>
            {zones.length === 0 && <p className="soft">{words.recallNone}</p>}
            <ul>
              {zones.map(({ zone, firstSeen }) => (
                <li key={zone}>{words.recallBack(names(zone) ?? w.decisions.zoneGone, date(firstSeen))}</li>
              ))}
            </ul>
            {terms && (
              <p>
                <span className="strong">{words.recallTerms}:</span> {terms}
              </p>
            )}
            <div className="row not-printed">
              <LinkButton kind="quiet" to={pathTo.campaign(campaign)}>
                {words.toCampaign}
              </LinkButton>
            </div>
          </li>
        ))}
      </ul>
    </Section>
  );
}
