import type { SculptureSummary } from '../../engine/reckoning';
import type { BodyOf } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { thingsOfKind } from '../theThing';
import { keptSummary, workOut } from './keptSummaries';
import { live } from './live';

export interface SculptureRow {
  readonly thing: string;
  readonly body: BodyOf<'sculpture'>;
  /** Undefined while it is being worked out. */
  readonly summary: SculptureSummary | undefined;
}

/**
 * The works, those in most need first: dangers to people, then urgency, then the lower index; works not yet looked at and
 * works still being worked out follow by number. Never reads the entries: stale figures are worked out in the background.
 */
export const sculptureList = (desk: Desk): Question<readonly SculptureRow[]> =>
  live(desk, 'sculptures', async (again) => {
    const works = await thingsOfKind(desk, 'sculpture');
    const rows = await Promise.all(
      works.map(async ({ thing, body }) => ({ thing, body, summary: await keptSummary(desk, thing) })),
    );
    const stale = rows.filter((row) => row.summary === undefined).map((row) => row.thing);
    return { value: rows.sort(byNeed), ...(stale.length > 0 ? { after: () => workOut(desk, stale, again) } : {}) };
  });

const last = -1;

const byNeed = (a: SculptureRow, b: SculptureRow): number =>
  (b.summary?.dangers ?? 0) - (a.summary?.dangers ?? 0) ||
  (b.summary?.urgency ?? last) - (a.summary?.urgency ?? last) ||
  (a.summary?.index?.value ?? 101) - (b.summary?.index?.value ?? 101) ||
  byNumber.compare(a.body.number, b.body.number) ||
  (a.thing < b.thing ? -1 : 1);

/** Inventory numbers as people order them, 2 before 10, the same in every language. */
const byNumber = new Intl.Collator('en', { numeric: true });
