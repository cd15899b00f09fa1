import type { PaperSort } from './layout';
import { conditionReport } from './work/conditionReport';

/** Every kind of paper, in the order in which they are offered. */
export const paperSorts: readonly PaperSort[] = [conditionReport];

export const paperSortOf = (id: string): PaperSort | undefined => paperSorts.find((sort) => sort.id === id);
