import { nameOf } from '../../engine/record';
import type { DayOfWork } from '../../engine/year';
import type { YearAtHand } from './useYear';
import type { YearRow } from './yearRows';

export const wholeYear = 'year';

/** Days of the plan on which a work is visited, in order. */
export const daysOf = ({ rows }: YearAtHand): readonly string[] =>
  [...new Set(rows.flatMap(({ row }) => row?.day ?? []))].sort();

/** Works of a day, or of the whole year, that get anything. */
export const rowsOn = ({ rows }: YearAtHand, day: string): readonly YearRow[] =>
  rows.filter(({ row }) => row && (row.survey !== 'none' || row.waxes > 0) && (day === wholeYear || row.day === day));

const waterAt = ({ planned }: YearAtHand, work: string): number | undefined =>
  planned.accessSheet.find(({ thing }) => thing === nameOf.accessSheet(work))?.body.waterDepth;

/** Every work, whatever it gets this year. */
export const visitsAll = (atHand: YearAtHand) =>
  atHand.rows.map(({ around }) => ({
    work: around.sculpture.thing,
    zones: around.zones,
    inserts: around.inserts.length,
    water: waterAt(atHand, around.sculpture.thing),
  }));

/** What each is visited for. Washing and waxing stand apart: they may be another day's work. */
export const visitsOn = (
  atHand: YearAtHand,
  day: string,
  also: { readonly wash: boolean; readonly wax: boolean },
): readonly DayOfWork[] =>
  rowsOn(atHand, day).map(({ around, row }) => {
    const work = around.sculpture.thing;
    const waxed = (row?.waxes ?? 0) > 0;
    return {
      work,
      zones: around.zones,
      survey: row?.survey ?? 'none',
      wash: also.wash && waxed,
      wax: also.wax && waxed,
      stations: around.stations,
      squares: around.squares,
      inserts: around.inserts.length,
      access: around.access !== undefined,
      water: waterAt(atHand, work),
    };
  });
