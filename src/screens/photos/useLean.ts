import { useEffect, useState } from 'react';
import { feelLevel } from '../../actions';

/** Whole degrees the tablet leans, once it is felt; undefined where it has no sense for it. */
export const useLean = (on: boolean): number | undefined => {
  const [lean, setLean] = useState<number>();
  useEffect(() => (on ? feelLevel((degrees) => setLean(Math.round(degrees))) : undefined), [on]);
  return lean;
};
