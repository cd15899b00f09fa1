import { wordOf } from '../../device/wordOf';
import { type Kept, rowOf } from '../../device/workers';
import type { Firmness } from '../../engine/firmness';
import type { Desk, Question } from '../desk';
import { thingsOfKind } from '../theThing';
import { bringUpToDate, needFound, redraw, rowKept } from './figures';
import { live } from './live';

/**
 * How firm the order of need of all works is; null while that is worked out, or where it was left off. It is asked anew by
 * itself whenever a figure changed.
 */
export const firmnessOf = (desk: Desk): Question<Firmness | null> =>
  live<Firmness | null>(desk, 'firmness', async () => {
    const works = (await thingsOfKind(desk, 'sculpture')).map(({ thing }) => thing).sort();
    const found = await Promise.all(works.map((work) => needFound(desk, work)));
    if (found.some((one) => !one?.right)) return { value: null, after: () => bringUpToDate(desk) };
    const stamps = works.map((work, i) => [work, found[i]?.stamp ?? ''] as const);
    const stamp = wordOf(stamps);
    const kept = await rowKept<Kept<Firmness>>(desk, rowOf.firmness);
    if (kept?.stamp === stamp) return { value: kept.value };
    const none = found.every((one) => one?.value === null);
    return { value: null, after: none ? undefined : () => redraw(desk, stamp, stamps) };
  });
