import { type SculptureRecord, type Thing, zonesAt } from '../../engine/record';
import { kindOf } from '../../engine/trade';

/** One zone as the look shows it. */
export interface ZoneToLook {
  readonly zone: Thing<'zone'>;
  /** Green was recorded here before, or seen in a look: what a look is for. */
  readonly watched: boolean;
  /** The latest look on or before today. */
  readonly last: Thing<'look'> | undefined;
}

const hadGreen = (record: SculptureRecord, zone: string): boolean =>
  record.findings.some(
    ({ body }) =>
      body.zone === zone &&
      !body.cleared &&
      body.origin === 'metal' &&
      body.coverage?.value !== 0 &&
      kindOf(body.kind)?.countsAs === 'green',
  ) || record.looks.some(({ body }) => body.zone === zone && body.result === 'green');

/** The zones of a work on a day, in walking order, each with whether to watch it and what the last look saw. */
export const zonesToLook = (record: SculptureRecord, today: string): readonly ZoneToLook[] =>
  zonesAt(record, today).map((zone) => ({
    zone,
    watched: hadGreen(record, zone.thing),
    last: record.looks
      .filter(({ body }) => body.zone === zone.thing && body.date <= today)
      .sort((a, b) => a.body.date.localeCompare(b.body.date) || (a.thing < b.thing ? -1 : 1))
      .at(-1),
  }));
