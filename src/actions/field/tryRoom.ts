import { trialWrite } from '../../device/trialWrite';
import { noteFull } from '../fullDevice';

/** Five photos: what a round needs at least to be begun. Bytes; of our own making. */
const forABeginning = 20_000_000;

/** A short trial before a round: where the tablet is full it is told now and not on the ladder. */
export const tryRoom = async (bytes = forABeginning): Promise<void> => {
  const { whole, said = '' } = await trialWrite(bytes);
  if (!whole && /quota|space|disk/i.test(said)) noteFull();
};
