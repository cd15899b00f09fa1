import { deviceReason } from './reasonCodes';
import { StoreProblem } from './storeProblem';

/** SHA-256 as 64 lower-case hexadecimal digits. Browsers give hashing to secure addresses only: elsewhere a problem that says so. */
export const sha256 = async (bytes: BufferSource): Promise<string> => {
  if (!globalThis.crypto?.subtle) throw new StoreProblem(deviceReason('address not secure', {}));
  const digest = await crypto.subtle.digest('SHA-256', bytes);
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
};
