import type { Reason } from '../../engine/record';
import type { Desk, Outcome } from '../desk';
import { keptPhoto, type PhotoFacts } from '../keepPhoto';
import { attempt, refuse } from '../outcome';
import { refusal } from '../reasonCodes';
import { theThing } from '../theThing';
import { photoCame } from './photoCame';
import { byItsDay } from './roundOfPhoto';

/** What the camera is pointed at again each year. */
export type PhotoPlace = { readonly station: string } | { readonly sentinel: string };

/**
 * A photo taken from a station, or of a sentinel square. It is put in the round `facts` names, else in the one of its day;
 * the surface is dry or wet, washed or not, as that round says, unless `facts` does. `notes` as of `keepPhoto`.
 */
export const photoForStation = (
  desk: Desk,
  sculpture: string,
  at: PhotoPlace,
  file: Blob,
  facts: PhotoFacts = {},
): Promise<Outcome<{ readonly photo: string; readonly notes: readonly Reason[] }>> =>
  attempt(async () => {
    const { known, role } = await placed(desk, sculpture, at);
    const roundOf = await byItsDay(desk, sculpture);
    const kept = await keptPhoto(desk, sculpture, file, role, (taken) => {
      const round = facts.round ? undefined : roundOf(facts.taken ?? taken);
      const said = round && { round: round.thing, wet: round.body.wet, washed: round.body.washed };
      return { ...said, ...known, ...facts };
    });
    await photoCame(desk, kept.changes);
    return { photo: kept.photo, notes: kept.notes };
  });

const placed = async (
  desk: Desk,
  sculpture: string,
  at: PhotoPlace,
): Promise<{ known: PhotoFacts; role: 'station' | 'sentinel' }> => {
  const here = (own: string, thing: string) => own === sculpture || refuse(refusal('not here', { thing }));
  if ('station' in at) {
    const { body } = await theThing(desk, 'station', at.station);
    here(body.sculpture, at.station);
    return { known: { station: at.station }, role: 'station' };
  }
  const { body } = await theThing(desk, 'sentinel', at.sentinel);
  here(body.sculpture, at.sentinel);
  return { known: { sentinel: at.sentinel, zone: body.zone }, role: 'sentinel' };
};
