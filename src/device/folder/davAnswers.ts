import { StoreProblem } from '../storeProblem';
import { folderReason } from './reasonCodes';

/** What was asked: the path within the folder, the folder's own address, and how much was sent. */
export interface Asked {
  readonly path: string;
  readonly root: URL;
  readonly bytes?: number;
}

/** What a status of HTTP means to a person (RFC 9110; 207, 423 and 507: RFC 4918). */
const meanings: Readonly<Record<number, (asked: Asked) => ReturnType<typeof folderReason>>> = {
  // A page, a redirect to one, or a success where none of this kind can be: something else answers here.
  200: ({ root }) => folderReason('folder: not a folder', { address: root.href }),
  207: ({ root }) => folderReason('folder: not a folder', { address: root.href }),
  301: ({ root }) => folderReason('folder: not a folder', { address: root.href }),
  401: () => folderReason('folder: password refused', {}),
  403: ({ path }) => folderReason('folder: not allowed', { path }),
  404: ({ root }) => folderReason('folder: none there', { address: root.href }),
  405: ({ root }) => folderReason('folder: none there', { address: root.href }),
  413: ({ path, bytes = 0 }) => folderReason('folder: file too large', { path, megabytes: bytes / 1e6 }),
  423: ({ path }) => folderReason('folder: locked', { path }),
  501: ({ root }) => folderReason('folder: none there', { address: root.href }),
  507: () => folderReason('folder: full', {}),
};

/** Why the server did not do it, by the status it gave. */
export const refusedBy = (status: number, asked: Asked): StoreProblem =>
  new StoreProblem(
    meanings[status]?.(asked) ?? folderReason('folder: refused', { status: String(status), path: asked.path }),
  );

/** Nothing came back, or it broke off: the browser tells a page no more than that. `late`: given up after so long, in ms. */
export const unanswered = (late?: number, cause?: unknown): StoreProblem => {
  if (globalThis.navigator?.onLine === false) return new StoreProblem(folderReason('folder: no network', {}), cause);
  const reason =
    late === undefined
      ? folderReason('folder: no answer', {})
      : folderReason('folder: answer too late', { seconds: late / 1000 });
  return new StoreProblem(reason, cause);
};
