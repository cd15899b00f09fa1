import type { SculptureSummary } from '../../engine/reckoning';
import type { BodyOf } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { thingsOfKind } from '../theThing';
import { bringUpToDate, isBehind, summaryFound } from './figures';
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
  live(desk, 'sculptures', async () => {
    const works = await thingsOfKind(desk, 'sculpture');
    const rows = await Promise.all(
      works.map(async ({ thing, body }) => {
        const found = await summaryFound(desk, thing);
        return { thing, body, summary: found?.value, right: found?.right === true };
      }),
    );
    const behind = rows.some(({ right }) => !right) || (await isBehind(desk));
    const value = rows.map(({ thing, body, summary }) => ({ thing, body, summary })).sort(byNeed);
    return { value, after: behind ? () => bringUpToDate(desk) : undefined };
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
