import { boardCase } from './campaign/boardCase';
import { fundSheet } from './campaign/fundSheet';
import type { PaperSort } from './layout';
import { conditionReport } from './work/conditionReport';

/** Every kind of paper, in the order in which they are offered. */
export const paperSorts: readonly PaperSort[] = [conditionReport, boardCase, fundSheet];

export const paperSortOf = (id: string): PaperSort | undefined => paperSorts.find((sort) => sort.id === id);
