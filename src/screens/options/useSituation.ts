import { collectionInsights, insightsOf, type Planned, plannedOf, sculptureRecordOf } from '../../actions';
import type { ZoneHolds } from '../../engine/hold';
import type { Situation } from '../../engine/options';
import type { SculptureRecord } from '../../engine/record';
import { useDesk, useQuestion } from '../shell';

export interface Known {
  /** Null where the work is not here, undefined while it is read. */
  readonly record: SculptureRecord | null | undefined;
  readonly planned: Planned | undefined;
  /** Undefined while the figures are worked out. */
  readonly situation: Situation | undefined;
  /** Holds of every work here. */
  readonly works: readonly (readonly ZoneHolds[])[];
}

/** What is kept and what was worked out of a work, as the options need it. */
export const useSituation = (sculpture: string): Known => {
  const desk = useDesk();
  const record = useQuestion(sculptureRecordOf(desk, sculpture));
  const planned = useQuestion(plannedOf(desk, sculpture));
  const insights = useQuestion(insightsOf(desk, sculpture));
  const all = useQuestion(collectionInsights(desk));
  const green = insights?.trends.work.green.trend;
  const situation: Situation | undefined =
    insights && planned
      ? {
          record: insights.record,
          need: insights.need,
          holds: insights.holds,
          advice: insights.advice,
          growth: green?.slope
            ? { perYear: green.slope, surely: green.word === 'trend' && green.up, rounds: green.n }
            : null,
          causes: planned.cause,
          today: desk.today(),
        }
      : undefined;
  return { record, planned, situation, works: all?.perWork.map(({ holds }) => holds) ?? [] };
};
