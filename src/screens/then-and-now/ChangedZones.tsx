import type { FindingChange, ThenAndNow, ZoneChange } from '../../engine/change';
import type { SculptureRecord } from '../../engine/record';
import { type NameOfThing, w } from '../../words';
import { Section } from '../parts';
import { Fold } from '../parts/Fold';
import { ZoneCompared } from './ZoneCompared';

const words = w.thenAndNow;

interface ChangedZonesProps {
  readonly record: SculptureRecord;
  readonly answer: ThenAndNow;
  readonly nameOf: NameOfThing;
}

/** A change that is called, or something that came, went or changed its class: what a person wants to see first. */
const stands = ({ verdict, named }: FindingChange): boolean =>
  verdict === 'worse' || verdict === 'better' || named.length > 0;
const moved = ({ verdict }: ZoneChange): boolean => verdict === 'worse' || verdict === 'better';

/** What changed, zone by zone in walking order; what did not surely change is put away, and counted. */
export function ChangedZones({ record, answer, nameOf }: ChangedZonesProps) {
  const ofZone = (zone: string, which: (finding: FindingChange) => boolean) =>
    answer.findings.filter((finding) => finding.zone === zone && which(finding));
  const changed = answer.zones
    .map((zone) => ({ zone, findings: ofZone(zone.zone, stands) }))
    .filter(({ zone, findings }) => findings.length > 0 || moved(zone));
  const shown = new Set(changed.map(({ zone }) => zone.zone));
  const rest = answer.zones
    .map((zone) => ({ zone, findings: ofZone(zone.zone, (finding) => !stands(finding)) }))
    .filter(({ zone, findings }) => findings.length > 0 || !shown.has(zone.zone));
  const restFindings = rest.reduce((sum, { findings }) => sum + findings.length, 0);
  const zoneOf = (name: string) => record.zones.find(({ thing }) => thing === name);
  return (
    <Section title={words.changed} lead={changed.length === 0 ? words.changedNone : undefined}>
      {changed.map(({ zone, findings }) => (
        <ZoneCompared key={zone.zone} zone={zoneOf(zone.zone)} change={zone} findings={findings} nameOf={nameOf} />
      ))}
      {rest.length > 0 && (
        <Fold show={words.unchangedFold(restFindings, rest.length)} hide={words.unchangedHide}>
          <h3 className="only-printed">{words.unchanged}</h3>
          {rest.map(({ zone, findings }) => (
            <ZoneCompared
              key={zone.zone}
              zone={zoneOf(zone.zone)}
              change={zone}
              findings={findings}
              nameOf={nameOf}
              quiet
            />
          ))}
        </Fold>
      )}
    </Section>
  );
}
