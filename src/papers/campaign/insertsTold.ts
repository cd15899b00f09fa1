import type { BodyOf, Thing } from '../../engine/record';
import { beddings } from '../../engine/trade';
import { date, measure, w } from '../../words';
import type { CampaignOnPaper } from './campaignOnPaper';

const words = w.paperSite;

type Care = BodyOf<'insertCare'>;

/** An insert with what it bears, by the word of a named expert, and how it is kept from heat. */
export interface InsertTold {
  readonly insert: Thing<'insert'>;
  readonly care: Care | undefined;
  readonly name: string;
  readonly removable: string;
  readonly bedding: string;
  /** How it is kept from heat; '' where nobody said. */
  readonly kept: string;
  /** Undefined where no named expert set one. */
  readonly limit: string | undefined;
}

/** The inserts of a work, by name. */
export const insertsTold = ({ record, planned }: Pick<CampaignOnPaper, 'record' | 'planned'>): readonly InsertTold[] =>
  record.inserts
    .map((insert): InsertTold => {
      const care = planned.insertCare.find(({ body }) => body.insert === insert.thing)?.body;
      const { material, count, zone, removable, where } = insert.body;
      const letter = record.zones.find(({ thing }) => thing === zone)?.body.letter ?? '';
      const bedding = beddings.find(({ id }) => id === care?.bedding)?.name ?? care?.bedding ?? '';
      return {
        ...{ insert, care, bedding },
        name: [w.insertCare.nameOf(material, count, letter), where].filter(Boolean).join(', '),
        removable: words.removableShort[removable],
        kept: keptBy(care),
        limit: limitOf(care),
      };
    })
    .sort((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true }));

const keptBy = (care: Care | undefined): string =>
  [
    care?.method && w.insertCare.methods[care.method],
    care?.shield,
    care?.takenOut && words.outFrom(date(care.takenOut), care.putBack ? date(care.putBack) : ''),
  ]
    .filter(Boolean)
    .join('; ');

const limitOf = (care: Care | undefined): string | undefined => {
  const { most, mostDifference, mostPerMinute, limitBy, limitDate } = care ?? {};
  const limits = [
    most !== undefined && words.limitMost(measure('temperature', most)),
    mostDifference !== undefined && words.limitApart(measure('difference', mostDifference)),
    mostPerMinute !== undefined && words.limitRate(measure('difference', mostPerMinute)),
  ].filter((limit) => typeof limit === 'string');
  if (limits.length === 0 || !limitBy) return undefined;
  return words.limit(limits, limitBy.name ?? limitBy.role, limitDate ? date(limitDate) : '');
};
