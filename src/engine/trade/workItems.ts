import { named } from './named';
import type { Source } from './source';

/** A line of work that bidders price. */
export interface WorkItem {
  readonly id: string;
  readonly name: string;
  /** Priced for each zone by its area, for each insert, or once. */
  readonly per: 'zone' | 'insert' | 'once';
  readonly unit: 'm2' | 'piece' | 'sum' | 'day';
  /** It keeps an insert from harm. */
  readonly protects?: true;
  readonly source: Source;
}

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };
const item = (id: string, name: string, per: WorkItem['per'], unit: WorkItem['unit'], protects?: true): WorkItem => ({
  id,
  name,
  per,
  unit,
  ...(protects ? { protects } : {}),
  source: practice,
});

export const workItems: readonly WorkItem[] = named('workItems', [
  item('strip and repatinate', 'Clean down, desalt where asked, patinate and wax', 'zone', 'm2'),
  item('clean down', 'Clean down to the sound surface', 'zone', 'm2'),
  item('desalt', 'Draw out salts, with tests before and after', 'zone', 'm2'),
  item('patinate', 'Patinate to the agreed colour', 'zone', 'm2'),
  item('local colour', 'Local cleaning and colour', 'zone', 'm2'),
  item('wash and wax', 'Wash and wax', 'zone', 'm2'),
  item('take out and refit', 'Take out, keep safe and refit', 'insert', 'piece', true),
  item('shield and watch', 'Shield and watch the temperature', 'insert', 'piece', true),
  item('sample area', 'Sample area and test panel', 'once', 'sum'),
  item('access', 'Access: scaffold, lift or platform', 'once', 'sum'),
  item('drain', 'Drain, dam and refill the basin', 'once', 'sum'),
  item('protect around', 'Protect stone, planting and paving around', 'once', 'sum'),
  item('report', 'Photographs, layer log and report', 'once', 'sum'),
]);

const byId = new Map(workItems.map((row) => [row.id, row]));
export const workItemOf = (id: string): WorkItem | undefined => byId.get(id);

/** How far areas taken for a survey may be off when work is priced, as shares to either side. */
export const areaTolerance = {
  low: 0.1,
  high: 0.25,
  source: practice,
} as const;

/** A price a unit above so many times the median of all is looked at again. */
export const outlierFactor = { value: 2, source: practice } as const;

/** With fewer prices than this no median says anything of the odd one. */
export const fewestPrices = {
  value: 3,
  source: { text: 'Of two prices each is as odd as the other.', sure: 'own choice' } as Source,
} as const;

/** After a cause was removed a surface is watched for so many days before it is treated: one whole year of weather. */
export const seasonDays = { value: 365, source: practice } as const;
