import type { CollectionInsights, Planned, WorkAround, YearAround } from '../../actions';
import type { Thing } from '../../engine/record';
import {
  factsOf,
  type OrderOfVisits,
  orderOfVisits,
  type Proposal,
  proposalOf,
  type Row,
  timeOf,
  type WorkFacts,
  type WorkTime,
} from '../../engine/year';
import { workName } from '../../words';

/** One work in the plan of a year: what she said of it, or what is proposed. */
export interface YearRow {
  readonly around: WorkAround;
  readonly name: string;
  /** Missing while figures are worked out. */
  readonly facts: WorkFacts | undefined;
  /** Missing too for a year that is over: what is known today proposes nothing for it. */
  readonly proposal: Proposal | undefined;
  readonly row: Row | undefined;
  readonly kept: boolean;
  readonly time: WorkTime | undefined;
}

export const yearOf = (day: string): number => Number(day.slice(0, 4));

/** A proposal as a row of a plan. */
export const asRow = ({ work, survey, waxes, lift }: Proposal): Row => ({
  work,
  survey,
  waxes,
  ...(lift ? { lift } : {}),
});

export const planOf = (planned: Planned, year: number): Thing<'yearPlan'> | undefined =>
  planned.yearPlan.find(({ body }) => body.year === year);

/** Kept works in her order, then the others by number. */
export const yearRows = (
  around: YearAround,
  planned: Planned,
  insights: CollectionInsights | undefined,
  year: number,
  today: string,
): readonly YearRow[] => {
  const plan = planOf(planned, year);
  const place = new Map(plan?.body.works.map(({ work }, i) => [work, i]));
  const last = place.size;
  return around.works
    .map((one): YearRow => {
      const work = one.sculpture.thing;
      const worked = insights?.perWork.find(({ record }) => record.sculpture.thing === work);
      const facts = worked && factsOf(worked, planned.move, today);
      const proposal = facts && year >= yearOf(today) ? proposalOf(facts, year) : undefined;
      const kept = plan?.body.works.find((row) => row.work === work);
      const row = kept ?? (proposal && asRow(proposal));
      const time = facts && row && timeOf(facts, row, one.stations, around.pace, around.labour);
      return { around: one, name: workName(one.sculpture), facts, proposal, row, kept: kept !== undefined, time };
    })
    .sort((a, b) => (place.get(a.around.sculpture.thing) ?? last) - (place.get(b.around.sculpture.thing) ?? last));
};

/** Height over width of a plan without a picture. */
export const blankSheet = { width: 1200, height: 900 } as const;

/** The short walk past these works on the plan of the site. */
export const walkPast = (works: readonly string[], { site, siteSize }: YearAround): OrderOfVisits => {
  const { width, height } = siteSize ?? blankSheet;
  const spots = new Map(site?.body.spots.map(({ work, x, y }) => [work, { x, y }]));
  return orderOfVisits(works, spots, site?.body.start, height / width);
};
