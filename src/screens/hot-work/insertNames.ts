import type { BodyOf, SculptureRecord, Thing } from '../../engine/record';
import { date, measureNumber, type NameOfThing, w } from '../../words';

/** "Cast glass, lens L2 (zone B)". */
export const insertName = (record: SculptureRecord, { body }: Thing<'insert'>): string => {
  const letter = record.zones.find(({ thing }) => thing === body.zone)?.body.letter ?? '';
  return w.insertCare.nameOf(body.material, body.count, letter);
};

/** Where it sits: "Zone B, Table top: second from the left", as far as it was said. */
export const insertPlace = (record: SculptureRecord, { body }: Thing<'insert'>): string => {
  const zone = record.zones.find(({ thing }) => thing === body.zone)?.body;
  return [zone && w.sculptures.zone.edit(zone.letter, zone.name), body.where].filter(Boolean).join(': ');
};

export const insertNames =
  (record: SculptureRecord): NameOfThing =>
  (thing) => {
    const insert = record.inserts.find((each) => each.thing === thing);
    return insert && insertName(record, insert);
  };

/** Somebody by role, with the name where there is one. */
export const personText = ({ role, name }: { readonly role: string; readonly name?: string | undefined }): string =>
  [role, name].filter(Boolean).join(', ');

/** "60 °C, 40 K between two sides, set by …", or undefined where nobody set one. */
export const limitText = (care: BodyOf<'insertCare'> | undefined): string | undefined => {
  if (!care?.limitBy) return undefined;
  const words = w.hotWork.readings;
  const limits = [
    care.most !== undefined && words.limitDegrees(measureNumber('temperature', care.most, 1)),
    care.mostDifference !== undefined && words.limitDifference(measureNumber('difference', care.mostDifference, 1)),
    care.mostPerMinute !== undefined && words.limitRate(measureNumber('difference', care.mostPerMinute, 1)),
  ].filter(Boolean);
  if (limits.length === 0) return undefined;
  return [...limits, words.limitBy(personText(care.limitBy), date(care.limitDate ?? ''))].join(', ');
};
