import { StoreProblem } from '../storeProblem';
import { refusedBy } from './davAnswers';
import { type Answer, askedOf, type DavAccess, davAsk, davAskListing, type Question } from './davAsk';
import { listingAsked } from './davListing';
import { type Folder, plainPath } from './folder';
import { folderReason } from './reasonCodes';

/**
 * A WebDAV folder (RFC 4918) on the server this page came from. `root` is an address beside the page; name and password
 * are held by this object and nowhere else.
 */
export function davFolder({ root, name, password }: { root: string; name: string; password: string }): Folder {
  if (name.includes(':')) throw new StoreProblem(folderReason('folder: name with colon', {}));
  const access: DavAccess = { root: new URL(root, location.href), name, password };
  const ask = (question: Question): Promise<Answer> => davAsk(access, question);
  const refused = ({ status }: Answer, question: Question) => refusedBy(status, askedOf(access, question));

  /**
   * Makes the folders on the way to a file. What speaks against one is no fault yet: another tablet may have made it in
   * the same moment, which servers answer each in their way. It is given back, for when the file fails too.
   */
  const foldersMadeFor = async (path: string, signal?: AbortSignal): Promise<StoreProblem | undefined> => {
    let against: StoreProblem | undefined;
    const above = path.split('/').slice(0, -1);
    for (const depth of above.keys()) {
      const question = { method: 'MKCOL', path: `${above.slice(0, depth + 1).join('/')}/`, signal };
      const answer = await ask(question);
      against = answer.status === 201 ? undefined : refused(answer, question);
    }
    return against;
  };

  return {
    async list(folder, signal) {
      const path = folder === '' ? '' : `${plainPath(folder)}/`;
      const headers = { Depth: '0', 'Content-Type': 'application/xml; charset=utf-8' };
      const question = { method: 'PROPFIND', path, headers, body: listingAsked, signal };
      const answer = await ask(question);
      if (answer.status === 404 && folder !== '') return [];
      if (answer.status !== 207) throw refused(answer, question);
      return davAskListing(access, path, signal);
    },
    async get(path, signal) {
      const question = { method: 'GET', path: plainPath(path), signal };
      const answer = await ask(question);
      if (answer.status === 404) return undefined;
      if (!answer.bytes) throw refused(answer, question);
      return answer.bytes;
    },
    async put(path, bytes, signal) {
      const headers = { 'If-None-Match': '*', 'Content-Type': 'application/octet-stream' };
      const question = { method: 'PUT', path: plainPath(path), headers, body: bytes, signal };
      let answer = await ask(question);
      if (path.includes('/') && (answer.status === 409 || answer.status === 404)) {
        const against = await foldersMadeFor(path, signal);
        answer = await ask(question);
        if (against && (answer.status === 409 || answer.status === 404)) throw against;
      }
      if (answer.status === 412) return 'there already';
      // Some servers do not know If-None-Match for what is written (nginx 1.22, measured) and say by 204 what they did.
      if (answer.status === 204) throw new StoreProblem(folderReason('folder: written over', { path }));
      // Success as such will not do: a network's sign-in page gives that too, and keeps nothing.
      if (answer.status !== 201) throw refused(answer, question);
      return 'put';
    },
    async remove(path, signal) {
      const question = { method: 'DELETE', path: plainPath(path), signal };
      const answer = await ask(question);
      if (answer.status !== 204 && answer.status !== 404) throw refused(answer, question);
    },
  };
}
