import { type BodyOf, nameOf, type SculptureRecord, type Thing } from '../../../src/engine/record';
import { type InventedRound, type InventedWork, invented, zoneName } from '../change/invented';

/** A look as a row: zone letter, day, what was seen. */
export interface InventedLook {
  readonly zone?: string;
  readonly date: string;
  readonly result: BodyOf<'look'>['result'];
  readonly planned?: boolean;
  /** null: not said. */
  readonly wet?: BodyOf<'look'>['wet'] | null;
}

export interface Tended extends Omit<InventedWork, 'rounds' | 'zones'> {
  readonly zones?: InventedWork['zones'];
  readonly rounds?: readonly InventedRound[];
  readonly looks?: readonly InventedLook[];
  readonly exposure?: Readonly<Record<string, readonly string[]>>;
  readonly rules?: BodyOf<'holdRules'>;
  /** Takes the place of "w" in the work's name, so that two works have zones of their own. */
  readonly work?: string;
}

/** One invented work with looks, exposures and rules of its own. */
export const tended = ({
  zones = { A: {} },
  rounds = [],
  looks = [],
  exposure = {},
  rules,
  work,
  ...more
}: Tended): SculptureRecord => {
  const record = invented({ zones, rounds, ...more });
  const sculpture = record.sculpture.thing;
  const lead = record.sculpture.lead;
  const done: SculptureRecord = {
    ...record,
    holdRules: rules ?? null,
    zones: record.zones.map((zone) => {
      const codes = Object.entries(exposure).find(([letter]) => zoneName(letter) === zone.thing)?.[1];
      return codes ? { ...zone, body: { ...zone.body, exposure: [...codes] } } : zone;
    }),
    looks: looks.map(({ zone = 'A', date, result, planned = true, wet = 'dry' }, i): Thing<'look'> => {
      const thing = nameOf.look(`l${i}`);
      const body = { sculpture, zone: zoneName(zone), date, result, planned, ...(wet ? { wet } : {}) };
      return { thing, body, lead: { ...lead, thing, kind: 'look', body }, heads: [lead.id] };
    }),
  };
  return work === undefined ? done : renamed(done, work);
};

/** The same work under another name, its zones too. */
const renamed = (record: SculptureRecord, work: string): SculptureRecord =>
  JSON.parse(
    JSON.stringify(record).replaceAll('zone/', `zone/${work}-`).replaceAll('sculpture/w', `sculpture/${work}`),
  );

/** Green of a share in zone A in the May rounds of years in a row; null: not looked, 'carried' and 'nothing' as they are. */
export const mays = (
  first: number,
  ...covers: readonly (number | 'nothing' | 'carried' | 'not looked')[]
): InventedRound[] =>
  covers.map((cover, i) => ({
    date: `${first + i}-05-12`,
    saw: { A: typeof cover === 'number' ? [{ kind: 'green-spots', cover }] : cover },
  }));

export const waxed = (...dates: readonly string[]): { type: string; date: string }[] =>
  dates.map((date) => ({ type: 'wax', date }));

export const today = '2026-10-15';
