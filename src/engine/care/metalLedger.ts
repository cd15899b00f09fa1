import { endOf, type Reason, type SculptureRecord, type Thing, vagueDateOrder } from '../record';
import { treatmentOf } from '../trade';
import { areaDone } from './areaDone';
import { because } from './reasonCodes';

export interface LedgerLine {
  readonly treatment: Thing<'treatment'>;
  /** A coating taken off is listed and not counted: the metal stays. */
  readonly takes: 'metal' | 'coating';
  /** Square metres, with where they come from; null where no zone is drawn yet and nobody said. */
  readonly m2: {
    readonly value: number;
    readonly low: number;
    readonly high: number;
    readonly reasons: readonly Reason[];
  } | null;
}

export interface MetalLedger {
  /** The oldest first. */
  readonly lines: readonly LedgerLine[];
  /** How many times metal was taken off each living zone, its forebears included. */
  readonly ofZones: readonly { readonly zone: Thing<'zone'>; readonly times: number }[];
  /** The most of any living zone; of the work where it has none. */
  readonly most: number;
}

/** Everything ever taken off a work for good, whoever did it. What is gone stays gone: a split zone keeps the count of the one it came from. */
export const metalLedger = (record: SculptureRecord): MetalLedger => {
  const lines = record.treatments
    .flatMap((treatment): LedgerLine[] => {
      const said = treatment.body.takenAway ?? 0;
      const takes = said > 0 ? 'metal' : treatmentOf(treatment.body.type)?.takes;
      return takes ? [{ treatment, takes, m2: areaOf(record, treatment) }] : [];
    })
    .sort((a, b) => (orderOf(a) < orderOf(b) ? -1 : orderOf(a) > orderOf(b) ? 1 : 0));
  const metal = lines.filter(({ takes }) => takes === 'metal');
  const ofZones = record.zones
    .filter((zone) => endOf(zone) === undefined)
    .map((zone) => {
      const line = forebears(record, zone.thing);
      const was = ({ treatment: { body } }: LedgerLine) =>
        body.zones.length === 0 || body.zones.some((name) => line.has(name));
      return { zone, times: metal.filter(was).length };
    });
  const ofWork = ofZones.length === 0 ? metal.length : 0;
  return { lines, ofZones, most: Math.max(ofWork, ...ofZones.map(({ times }) => times)) };
};

const orderOf = ({ treatment }: LedgerLine): string => vagueDateOrder(treatment.body.date);

const areaOf = (record: SculptureRecord, treatment: Thing<'treatment'>): LedgerLine['m2'] => {
  const said = treatment.body.takenAway;
  if (said !== undefined && said > 0)
    return { value: said, low: said, high: said, reasons: [because('care: area said')] };
  const { zones, ...area } = areaDone(record, treatment);
  if (zones === 0) return null;
  return { ...area, reasons: [because('care: area of the zones', { zones })] };
};

/** A zone with all zones it came from by splitting and joining. */
const forebears = (record: SculptureRecord, zone: string): ReadonlySet<string> => {
  const line = new Set([zone]);
  for (const name of line)
    for (const { thing, body } of record.zones)
      if (body.joined?.into === name || body.split?.into.some((part) => part.zone === name)) line.add(thing);
  return line;
};
