import { boardCase } from './campaign/boardCase';
import { treatmentDossier } from './campaign/dossier';
import { fundSheet } from './campaign/fundSheet';
import { requestForProposals } from './campaign/requestForProposals';
import { siteCard } from './campaign/siteCard';
import { zoneCards } from './cards/zoneCards';
import { conservatorPacket } from './collection/conservatorPacket';
import { successorLetter } from './collection/successorLetter';
import { yearPage } from './collection/yearPage';
import type { PaperSort } from './layout';
import { conditionReport } from './work/conditionReport';
import { conservatorPage } from './work/conservatorPage';
import { insurerNote } from './work/insurerNote';
import { seasonLog } from './work/seasonLog';
import { visitorPanel } from './work/visitorPanel';

/** Every kind of paper, in the order in which they are offered. */
export const paperSorts: readonly PaperSort[] = [
  conditionReport,
  seasonLog,
  insurerNote,
  conservatorPage,
  visitorPanel,
  conservatorPacket,
  zoneCards,
  boardCase,
  fundSheet,
  requestForProposals,
  siteCard,
  treatmentDossier,
  yearPage,
  successorLetter,
];

export const paperSortOf = (id: string): PaperSort | undefined => paperSorts.find((sort) => sort.id === id);
