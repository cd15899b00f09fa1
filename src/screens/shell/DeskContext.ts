import { createContext, useContext } from 'react';
import type { Desk, Opening } from '../../actions';

export const DeskContext = createContext<Desk | null>(null);

/** The open collection. Every screen under the shell has one. */
export function useDesk(): Desk {
  const desk = useContext(DeskContext);
  if (!desk) throw new Error('A screen was shown before a collection was open.');
  return desk;
}

export const OpeningContext = createContext<(opening: Opening) => void>(() => undefined);

/** Shows another collection in place of this one: the demo, or one's own again. */
export const useShowOpening = (): ((opening: Opening) => void) => useContext(OpeningContext);
