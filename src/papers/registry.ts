import { boardCase } from './campaign/boardCase';
import { fundSheet } from './campaign/fundSheet';
import { successorLetter } from './collection/successorLetter';
import type { PaperSort } from './layout';
import { conditionReport } from './work/conditionReport';

/** Every kind of paper, in the order in which they are offered. */
export const paperSorts: readonly PaperSort[] = [conditionReport, boardCase, fundSheet, successorLetter];

export const paperSortOf = (id: string): PaperSort | undefined => paperSorts.find((sort) => sort.id === id);
