import { StoreProblem } from '../storeProblem';
import { type Asked, refusedBy, unanswered } from './davAnswers';
import { davListing, listingAsked } from './davListing';
import type { Listed } from './folder';
import { folderReason } from './reasonCodes';

/** How long a server may take, in ms, and the most one file may hold, in bytes: over that it is none of ours. */
export const davNumbers = { patience: 60_000, patienceWithFile: 600_000, largest: 128 * 2 ** 20 };

export interface DavAccess {
  /** Address of the folder, which lies under the page's own: the page's policy lets it ask no other. */
  readonly root: URL;
  readonly name: string;
  readonly password: string;
}

export interface Question {
  readonly method: string;
  readonly path: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: Uint8Array<ArrayBuffer> | string;
  readonly signal?: AbortSignal;
}

export interface Answer {
  readonly status: number;
  /** Only of an answer 200 to GET. */
  readonly bytes?: Uint8Array<ArrayBuffer>;
}

/** Basic authentication (RFC 7617) with the name and password in UTF-8. */
const authorization = ({ name, password }: DavAccess): string =>
  `Basic ${btoa(String.fromCharCode(...new TextEncoder().encode(`${name}:${password}`)))}`;

export const askedOf = (access: DavAccess, { path, body }: Question): Asked => ({
  path,
  root: access.root,
  ...(body === undefined ? {} : { bytes: body.length }),
});

/**
 * One question to the server. Rejects with a StoreProblem where nothing, or half of it, comes back, and with the
 * signal's own reason when it is called off. Credentials travel in a header this page sets: with `omit` the browser adds
 * none of its own, keeps none, and opens no window of its own when they are refused.
 */
export async function davAsk(access: DavAccess, question: Question): Promise<Answer> {
  const { method, path, headers, body, signal } = question;
  const withFile = method === 'GET' || method === 'PUT';
  const patience = withFile ? davNumbers.patienceWithFile : davNumbers.patience;
  const cut = new AbortController();
  const callOff = () => cut.abort();
  const late = setTimeout(callOff, patience);
  signal?.addEventListener('abort', callOff);
  try {
    signal?.throwIfAborted();
    const answer = await fetch(new URL(path, access.root), {
      method,
      headers: { ...headers, Authorization: authorization(access) },
      body,
      credentials: 'omit',
      cache: 'no-store',
      redirect: 'manual',
      referrerPolicy: 'no-referrer',
      signal: cut.signal,
    });
    if (answer.type === 'opaqueredirect') return { status: 301 };
    if (method === 'GET' && answer.status === 200) return { status: 200, bytes: await bytesOf(answer, access, path) };
    await answer.body?.cancel();
    return { status: answer.status };
  } catch (error) {
    if (signal?.aborted) throw signal.reason;
    throw error instanceof StoreProblem ? error : unanswered(cut.signal.aborted ? patience : undefined, error);
  } finally {
    clearTimeout(late);
    signal?.removeEventListener('abort', callOff);
  }
}

async function bytesOf(answer: Response, access: DavAccess, path: string): Promise<Uint8Array<ArrayBuffer>> {
  // Where a network wants her to sign in first, its page answers everything with success.
  if (answer.headers.get('Content-Type')?.startsWith('text/html')) throw refusedBy(200, { path, root: access.root });
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  let length = 0;
  const reader = answer.body?.getReader();
  for (let next = await reader?.read(); next && !next.done; next = await reader?.read()) {
    length += next.value.length;
    if (length > davNumbers.largest) {
      await reader?.cancel();
      throw new StoreProblem(folderReason('folder: file not ours', { path }));
    }
    pieces.push(next.value);
  }
  return new Uint8Array(await new Blob(pieces).arrayBuffer());
}

/**
 * What is right in a folder that is there. XMLHttpRequest hands over the answer read by the browser's own XML parser,
 * which the page's policy forbids for text. It would open a window for the password where that is refused, so
 * `davAsk` asks about the folder first.
 */
export function davAskListing(access: DavAccess, path: string, signal?: AbortSignal): Promise<Listed[]> {
  const at = new URL(path, access.root);
  return new Promise((resolve, reject) => {
    const request = new XMLHttpRequest();
    const callOff = () => request.abort();
    const settle = (then: () => void) => {
      signal?.removeEventListener('abort', callOff);
      then();
    };
    request.open('PROPFIND', at);
    request.setRequestHeader('Authorization', authorization(access));
    request.setRequestHeader('Depth', '1');
    request.setRequestHeader('Content-Type', 'application/xml; charset=utf-8');
    request.responseType = 'document';
    request.overrideMimeType('application/xml');
    request.timeout = davNumbers.patience;
    request.onload = () =>
      settle(() => {
        const listed = request.status === 207 ? davListing(request.responseXML, at) : undefined;
        if (listed) resolve(listed);
        else reject(refusedBy(request.status, { path, root: access.root }));
      });
    request.onerror = () => settle(() => reject(unanswered()));
    request.ontimeout = () => settle(() => reject(unanswered(davNumbers.patience)));
    request.onabort = () => settle(() => reject(signal?.reason));
    signal?.addEventListener('abort', callOff);
    request.send(listingAsked);
  });
}
