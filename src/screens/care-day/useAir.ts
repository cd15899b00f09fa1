import { useEffect, useRef, useState } from 'react';
import { airOfDay, keepAirOfDay } from '../../actions';
import { useDesk } from '../shell';
import { type AirDraft, emptyAir } from './airDraft';

/** The numbers of the day, kept on this device touch by touch: they stand there again when the screen is come back to. */
export const useAir = (sculpture: string): readonly [AirDraft, (draft: AirDraft) => void] => {
  const desk = useDesk();
  const [draft, setDraft] = useState<AirDraft>(() => emptyAir('wax'));
  const touched = useRef(false);
  useEffect(() => {
    void airOfDay(desk, sculpture).then((kept) => {
      if (kept && !touched.current) setDraft({ ...emptyAir('wax'), ...kept } as AirDraft);
    });
  }, [desk, sculpture]);
  const change = (next: AirDraft) => {
    touched.current = true;
    setDraft(next);
    // What could not be kept still stands on the screen; keeping the reading itself says what is wrong with the device.
    keepAirOfDay(desk, sculpture, { ...next }).catch(() => undefined);
  };
  return [draft, change];
};
