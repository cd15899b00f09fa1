import type { BodyOf, Reason, Thing } from '../record';
import { type PaperItem, type PaperOf, paperItems } from '../trade';
import { because } from './reasonCodes';

export type ItemState = BodyOf<'completeness'>['items'][number]['state'];

/** One thing a paper must hold, and what was found of it; undefined: nobody has looked. */
export interface ItemStanding {
  readonly item: PaperItem;
  readonly state: ItemState | undefined;
  readonly where: string | undefined;
}

export interface PaperStanding {
  readonly rows: readonly ItemStanding[];
  /** What the letter asks for. */
  readonly missing: readonly PaperItem[];
  readonly unseen: number;
  /** Every row was looked at and none is missing. */
  readonly whole: boolean;
  readonly reasons: readonly Reason[];
}

/** A paper against the list of what it must hold. What was entered under a code this version does not know is left as it is. */
export const paperStanding = (of: PaperOf, entered: BodyOf<'completeness'> | undefined): PaperStanding => {
  const found = new Map(entered?.items.map((row) => [row.id, row]));
  const rows = paperItems[of].map((item) => {
    const row = found.get(item.id);
    return { item, state: row?.state, where: row?.where };
  });
  const missing = rows.filter(({ state }) => state === 'missing').map(({ item }) => item);
  const unseen = rows.filter(({ state }) => state === undefined).length;
  const whole = missing.length === 0 && unseen === 0;
  return { rows, missing, unseen, whole, reasons: reasonsOf(of, missing.length, unseen, rows.length) };
};

const reasonsOf = (of: PaperOf, missing: number, unseen: number, all: number): Reason[] => {
  if (unseen === all) return [because('campaign: paper not looked through', { of })];
  if (missing + unseen === 0) return [because('campaign: paper whole', { of })];
  const lacks = because('campaign: paper lacks', { of, count: missing + unseen });
  return of === 'report' ? [lacks, because('campaign: last payment waits')] : [lacks];
};

/** The paper of a campaign that was looked through last; of a bid where one is named. */
export const paperEntered = (
  papers: readonly Thing<'completeness'>[],
  campaign: string,
  of: PaperOf,
  bid?: string,
): Thing<'completeness'> | undefined =>
  papers
    .filter(({ body }) => body.campaign === campaign && body.of === of && (bid === undefined || body.bid === bid))
    .sort((a, b) => a.body.date.localeCompare(b.body.date))
    .at(-1);
