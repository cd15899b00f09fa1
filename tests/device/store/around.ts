import { type Box, memoryBox } from '../../../src/device/box';
import { openStore, type Store, type Surroundings } from '../../../src/device/store';
import { seeded } from '../../files/seeded';

/** What a store needs of a browser, in memory: ids by a seed, a box of its own, no other tab unless a test brings one. */
export const surroundings = (seed: number, given: Partial<Surroundings> = {}): Surroundings => {
  const draw = seeded(seed);
  let ms = Date.UTC(2026, 4, 12, 8);
  return {
    newId: () => draw.id(++ms),
    box: memoryBox(),
    locks: undefined,
    channel: () => undefined,
    ...given,
  };
};

let names = 0;
export const freshName = (): string => `test-${++names}`;

export const open = async (name: string, around: Surroundings): Promise<Store> => {
  const opening = await openStore(name, () => `collection/${around.newId()}`, around);
  if (opening.state !== 'open') throw new Error(opening.reason.code);
  return opening.store;
};

export const openFresh = async (seed = 1): Promise<{ store: Store; around: Surroundings; name: string }> => {
  const name = freshName();
  const around = surroundings(seed);
  return { store: await open(name, around), around, name };
};

export type { Box };
