import { collectionInsights, type Planned, plannedAll, type YearAround, yearAround } from '../../actions';
import type { Thing } from '../../engine/record';
import { useDesk, useQuestion } from '../shell';
import { planOf, type YearRow, yearOf, yearRows } from './yearRows';

export interface YearAtHand {
  readonly year: number;
  readonly around: YearAround;
  readonly planned: Planned;
  readonly plan: Thing<'yearPlan'> | undefined;
  readonly rows: readonly YearRow[];
  /** Against the year that runs. */
  readonly when: 'over' | 'now' | 'to come';
}

/** All a year's screens show; undefined while it is read for the first time. */
export const useYear = (year: number): YearAtHand | undefined => {
  const desk = useDesk();
  const around = useQuestion(yearAround(desk));
  const planned = useQuestion(plannedAll(desk));
  const insights = useQuestion(collectionInsights(desk));
  if (!around || !planned) return undefined;
  const rows = yearRows(around, planned, insights, year, desk.today());
  const running = yearOf(desk.today());
  const when = year < running ? 'over' : year > running ? 'to come' : 'now';
  return { year, around, planned, plan: planOf(planned, year), rows, when };
};
