/** Beside the worker, and kept with the app; see src/command/schema.ts. Without a build it lies at the root of the host. */
const address = import.meta.env.DEV ? '/survey.schema.json' : './survey.schema.json';

/**
 * The schema of the survey file, as it is published: what makes it, and Zod's part for it, are 22 kB the tablet need not keep. Rejects
 * where it cannot be read.
 */
export const schemaText = async (): Promise<string> => {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${answer.status} ${address}`);
  return answer.text();
};
