import { deviceBox } from '../../device/box';
import { isPersisted } from '../../device/persistence';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';
import { rememberedAnew, rememberedVersion } from '../remembered';
import { askPersistence, type StorageHealth } from '../storageHealth';

const askedKey = 'patina-round.asked to keep';

/**
 * True once something real was entered, the browser has not promised to keep it and was not asked for that: asked before the first entry
 * browsers say no, and asked again and again a person says no.
 */
export const persistenceWanted = (desk: Desk): Question<boolean> =>
  ask(
    desk,
    'persistence wanted',
    () => `${desk.store.changes()} ${rememberedVersion(desk)}`,
    async () => {
      if (desk.invented || deviceBox.read(askedKey) === true) return false;
      return (await desk.store.held()).entries > 0 && (await isPersisted()) === 'no';
    },
  );

/** Asks the browser to keep the data; from a tap. */
export const askToKeep = async (desk: Desk): Promise<StorageHealth['persisted']> => {
  const answer = await askPersistence(desk);
  notNow(desk);
  return answer;
};

/** The person does not want to be asked: the screen of keeping goes on offering it. */
export const notNow = (desk: Desk): void => {
  deviceBox.write(askedKey, true);
  rememberedAnew(desk);
};
