import { useState } from 'react';
import { useDesk } from '../shell';
import type { ShadeName } from './shading/shading';

/** What the map of a work shows. */
export interface MapChoice {
  readonly shade: ShadeName;
  /** Another photo of the station than the side's own. */
  readonly photo?: string;
  /** Another round than the one the work is known by. */
  readonly round?: string;
}

const atFirst: MapChoice = { shade: 'index' };
const left = new WeakMap<object, Map<string, MapChoice>>();

/** The map as it was left, while the page is open: whoever comes back from a visit finds what was chosen. */
export const useMapChoice = (sculpture: string) => {
  const desk = useDesk();
  const [choice, setChoice] = useState(() => left.get(desk)?.get(sculpture) ?? atFirst);
  const choose = (next: MapChoice) => {
    left.set(desk, (left.get(desk) ?? new Map<string, MapChoice>()).set(sculpture, next));
    setChoice(next);
  };
  return [choice, choose] as const;
};
