import { type DemoWork, type DemoZone, garden, roundDays } from '../../../src/demo/garden';
import type { SculptureRecord } from '../../../src/engine/record';
import type { InventedFinding, InventedVisit } from '../change/invented';
import { tended } from './garden';

const percent = (cover: number | null | undefined): number => (cover ?? 0) / 100;

/** What the yearly round of a year saw in a zone of the demo's tables. */
const sawIn = (zone: DemoZone, year: number): InventedVisit => {
  if (zone.notLooked && zone.series.every(({ cover }) => (cover[year] ?? null) === null)) return 'not looked';
  const found = zone.series.flatMap(
    ({ kind, origin = 'metal', cover, count, severity = 'slight' }): InventedFinding[] => {
      const [was, is] = [percent(cover[year - 1]), percent(cover[year])];
      if (is === 0) return was > 0 ? [{ kind, origin, severity, cleared: true }] : [];
      return [{ kind, origin, severity, ...(count ? { count } : { cover: is }) }];
    },
  );
  return found.length > 0 ? found : 'nothing';
};

/** Called as the demo calls them. */
const named = (record: SculptureRecord, { number, title, zones }: DemoWork): SculptureRecord => ({
  ...record,
  sculpture: { ...record.sculpture, body: { ...record.sculpture.body, number, title } },
  zones: record.zones.map((zone) => ({
    ...zone,
    body: { ...zone.body, name: zones.find(({ letter }) => letter === zone.body.letter)?.name ?? '' },
  })),
});

const recordOf = (work: DemoWork): SculptureRecord =>
  tended({
    work: work.number,
    zones: Object.fromEntries(work.zones.map(({ letter, m2 }) => [letter, { m2, since: '2021-04-12' }])),
    exposure: Object.fromEntries(work.zones.map(({ letter, exposure }) => [letter, exposure])),
    rounds: roundDays.map((date, year) => ({
      date,
      saw: Object.fromEntries(work.zones.map((zone) => [zone.letter, sawIn(zone, year)])),
    })),
    treatments: work.treatments.map(({ type, date, zones }) => ({
      type,
      date,
      ...(zones ? { zones: [...zones] } : {}),
    })),
    looks: work.looks.flatMap(({ zone, ...look }) => [...zone].map((letter) => ({ zone: letter, ...look }))),
  });

/** The six works of the demo as records, from its tables. */
export const saltlamp: readonly SculptureRecord[] = garden.map((work) => named(recordOf(work), work));
export const demoDay = '2026-10-15';
