/** 'not known' where the browser has no word for it. */
export type Persisted = 'yes' | 'no' | 'not known';

const said = (answer: boolean | undefined): Persisted => (answer === undefined ? 'not known' : answer ? 'yes' : 'no');

/** Whether the browser promised not to clear the data on its own when space runs short. */
export const isPersisted = async (): Promise<Persisted> => said(await quietly(() => navigator.storage?.persisted?.()));

/** Asks for that promise. Some browsers ask the person, some decide from how the app is used. */
export const askToPersist = async (): Promise<Persisted> => said(await quietly(() => navigator.storage?.persist?.()));

/** A refused question is no fault: the answer is then not known. */
const quietly = async (question: () => Promise<boolean> | undefined): Promise<boolean | undefined> => {
  try {
    return await question();
  } catch {
    return undefined;
  }
};
