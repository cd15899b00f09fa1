import { deviceReason } from '../reasonCodes';
import { StoreProblem } from '../storeProblem';

/** A sheet the person closed is no fault, and said apart from one the browser refused. */
export const refusedBy = (error: unknown): StoreProblem => {
  if (error instanceof StoreProblem) return error;
  const { name, message } = error instanceof Error ? error : new Error(String(error));
  if (name === 'AbortError') return new StoreProblem(deviceReason('save cancelled', {}), error);
  return new StoreProblem(deviceReason('save refused', { said: message }), error);
};
