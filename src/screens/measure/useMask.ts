import { useMemo, useState } from 'react';
import { type MaskSeen, maskOf, type Question } from '../../actions';
import type { Outline, Refused, Rgb } from '../../engine/photo';
import { useDesk, useQuestion } from '../shell';
import { enoughSpots, type MaskTouches } from './maskTouches';

const unasked: Question<undefined> = { subscribe: () => () => undefined, get: () => undefined };

const coloursOf = (spots: MaskTouches['green']): Rgb[] => spots.map(({ colour: [r, g, b] }) => [r, g, b]);

/** The mask the touches make: the one before stays in sight until the new one is there. Undefined while there are too few spots. */
export function useMask(photo: string, part: Outline, touches: MaskTouches, seed: number) {
  const desk = useDesk();
  const { green, sound, brush } = touches;
  const question = useMemo(
    (): Question<MaskSeen | Refused | undefined> =>
      enoughSpots({ green, sound, brush })
        ? maskOf(desk, photo, { part, green: coloursOf(green), sound: coloursOf(sound), brush, seed })
        : unasked,
    [desk, photo, part, green, sound, brush, seed],
  );
  const now = useQuestion(question);
  const [last, setLast] = useState(now);
  if (now !== undefined && now !== last) setLast(now);
  const asked = question !== unasked;
  return { seen: asked ? (now ?? last) : undefined, waiting: asked && now === undefined } as const;
}
