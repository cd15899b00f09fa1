/** Beside the worker, gzipped by the build (src/build/packed.mjs); without a build as it is, at the root of the host. */
const [address, isPacked] = import.meta.env.DEV ? ['/survey.schema.json', false] : ['./survey.schema.json.bin', true];

/**
 * The schema of the survey file, as it is published: what makes it, and Zod's part for it, are 23 kB the tablet need not keep. Rejects
 * where it cannot be read.
 */
export const schemaText = async (): Promise<string> => {
  const answer = await fetch(address);
  if (!answer.ok || !answer.body) throw new Error(`${answer.status} ${address}`);
  return isPacked ? new Response(answer.body.pipeThrough(new DecompressionStream('gzip'))).text() : answer.text();
};
