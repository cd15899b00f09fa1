import { createContext, useContext } from 'react';
import type { Desk } from '../../actions';

export const DeskContext = createContext<Desk | null>(null);

/** The open collection. Every screen under the shell has one. */
export function useDesk(): Desk {
  const desk = useContext(DeskContext);
  if (!desk) throw new Error('A screen was shown before a collection was open.');
  return desk;
}

/** Goes between one's own collection, which stays open, and the invented one. */
export interface Collections {
  showDemo(desk: Desk): void;
  showOwn(): void;
}

export const CollectionsContext = createContext<Collections>({ showDemo: () => undefined, showOwn: () => undefined });

export const useCollections = (): Collections => useContext(CollectionsContext);
