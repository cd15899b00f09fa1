import { createContext, useContext } from 'react';
import type { ZoneView } from '../../actions';
import type { Leaving, ZoneTouch } from '../../engine/record';

/** The open zone and what a touch on its pad does. */
export interface Pad {
  readonly view: ZoneView;
  readonly touch: (touch: ZoneTouch) => void;
  readonly leave: (leaving: Leaving) => void;
  /** Waits until the touch is durable: the camera may close the browser behind it. */
  readonly expectPhoto: (of: string) => Promise<boolean>;
  readonly keepPhoto: (of: string, file: File) => void;
  readonly keepingPhoto: boolean;
}

export const PadContext = createContext<Pad | null>(null);

export function usePad(): Pad {
  const pad = useContext(PadContext);
  if (!pad) throw new Error('A part of the pad was shown without an open zone.');
  return pad;
}
