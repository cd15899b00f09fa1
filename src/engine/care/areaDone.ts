import { areaOn, dayRange, type SculptureRecord, type Thing, zonesAt } from '../record';

/** Square metres a treatment was done on: of the zones it names, or of all that were there on its day. */
export interface AreaDone {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly zones: number;
}

export const areaDone = (record: SculptureRecord, { body }: Thing<'treatment'>): AreaDone => {
  const { to } = dayRange(body.date);
  const there = zonesAt(record, to);
  const zones =
    body.zones.length > 0
      ? record.zones.filter(({ thing }) => body.zones.includes(thing))
      : there.length > 0
        ? there
        : record.zones;
  const areas = zones.map((zone) => areaOn(zone, to));
  const sum = (of: (area: (typeof areas)[number]) => number) => areas.reduce((all, area) => all + of(area), 0);
  return { value: sum(({ m2 }) => m2), low: sum(({ low }) => low), high: sum(({ high }) => high), zones: zones.length };
};
