import { deviceReason } from '../reasonCodes';
import { StoreProblem } from '../storeProblem';

interface Shape {
  readonly name?: unknown;
  readonly message?: unknown;
  readonly code?: unknown;
  readonly inner?: unknown;
  readonly cause?: unknown;
  readonly failures?: unknown;
}

/** Errors nest: Dexie wraps the browser's, a bulk write holds one for each row. */
const layers = (error: unknown, depth = 5): Shape[] => {
  if (typeof error !== 'object' || error === null || depth === 0) return [];
  const shape = error as Shape;
  const failures = Array.isArray(shape.failures) ? shape.failures.slice(0, 3) : [];
  return [shape, ...[shape.inner, shape.cause, ...failures].flatMap((inner) => layers(inner, depth - 1))];
};

const fullNames = new Set(['QuotaExceededError', 'NS_ERROR_DOM_QUOTA_REACHED', 'NS_ERROR_FILE_NO_DEVICE_SPACE']);
const legacyQuotaCode = 22;

/** The tablet is full. Told by name on the error or inside it, by the old code, or by the browser's own message. */
export const isFull = (error: unknown): boolean =>
  layers(error).some(
    ({ name, code, message }) =>
      fullNames.has(String(name)) ||
      (code === legacyQuotaCode && name !== 'SyntaxError') ||
      (name === 'UnknownError' && /quota|disk|space/i.test(String(message))),
  );

const lostNames = new Set(['DatabaseClosedError', 'InvalidStateError']);

/** The connection broke, as after sleep on a tablet: worth opening it anew and trying once more. */
export const isLost = (error: unknown): boolean =>
  layers(error).some(
    ({ name, message }) =>
      lostNames.has(String(name)) || (name === 'UnknownError' && /connection|lost|clos/i.test(String(message))),
  );

/** Any fault as a problem that names the deed it stopped. */
export const asProblem = (error: unknown, deed: string): StoreProblem => {
  if (error instanceof StoreProblem) return error;
  const own = layers(error).find((layer) => layer instanceof StoreProblem);
  if (own instanceof StoreProblem) return own;
  if (isFull(error)) return new StoreProblem(deviceReason('device full', { deed }), error);
  if (isLost(error)) return new StoreProblem(deviceReason('connection lost', { deed }), error);
  const said = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  return new StoreProblem(deviceReason('store failed', { deed, said }), error);
};
