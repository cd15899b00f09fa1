import type { NeedOf, OrderOfNeed, Rank } from '../../engine/condition';
import type { Firmness } from '../../engine/firmness';
import { type NameOfThing, w } from '../../words';
import { Section } from '../parts';
import { Fold } from '../parts/Fold';
import { LongList } from '../parts/LongList';
import { Reasons } from '../parts/Reasons';
import { ZoneNeed } from './ZoneNeed';

const words = w.nextSteps;

interface ZonesInOrderProps {
  readonly ranks: readonly Rank[];
  readonly notRanked: OrderOfNeed['notRanked'];
  readonly needs: readonly NeedOf[];
  readonly names: NameOfThing;
  readonly firmness: Firmness | null;
}

/** Zones in order of need; those nothing presses on are put away and counted. */
export function ZonesInOrder({ ranks, notRanked, needs, names, firmness }: ZonesInOrderProps) {
  const places = new Map(firmness?.zones.map((place) => [place.zone, place]));
  const needOf = (sculpture: string) => needs.find(({ record }) => record.sculpture.thing === sculpture);
  const row = (rank: Rank) => {
    const need = needOf(rank.sculpture);
    return need && rank.zone ? (
      <ZoneNeed key={rank.zone} rank={rank} zone={rank.zone} need={need} names={names} place={places.get(rank.zone)} />
    ) : null;
  };
  const pressing = ranks.filter(({ urgency }) => urgency > 0);
  const quiet = ranks.filter(({ urgency }) => urgency === 0);
  return (
    <Section title={words.order} lead={words.orderWhat}>
      {ranks.length === 0 && <p className="soft">{words.emptyHere}</p>}
      {ranks.length > 0 && pressing.length === 0 && <p>{words.nothingPresses}</p>}
      <LongList rows={pressing} show={row} className="needs" />
      {quiet.length > 0 && (
        <Fold show={words.quietFold(quiet.length)} hide={words.quietHide}>
          <LongList rows={quiet} show={row} className="needs" />
        </Fold>
      )}
      {notRanked.length > 0 && (
        <Fold show={words.notRankedFold(notRanked.length)} hide={words.notRankedHide}>
          <p className="soft">{words.notRankedWhat}</p>
          <ul className="bare stack">
            {notRanked.map(({ sculpture, zone, reasons }) => (
              <li key={zone} className="not-ranked">
                <span className="strong">{[names(zone), names(sculpture)].filter(Boolean).join(', ')}</span>
                <Reasons reasons={reasons} nameOf={names} />
              </li>
            ))}
          </ul>
        </Fold>
      )}
    </Section>
  );
}
