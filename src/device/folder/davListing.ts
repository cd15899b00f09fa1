import { isPlainName, type Listed } from './folder';

/** What is asked of the server for each thing in a folder (RFC 4918, 9.1 and 15). */
export const listingAsked =
  '<?xml version="1.0" encoding="utf-8"?><propfind xmlns="DAV:"><prop><resourcetype/><getcontentlength/></prop></propfind>';

const dav = 'DAV:';

/**
 * Reads the server's answer 207 about the folder at `folder` (an address that ends in a slash). `undefined` where it
 * is no such answer. Things that are not right in this folder, and names this app never gives, are passed over.
 */
export function davListing(answer: Document | null, folder: URL): Listed[] | undefined {
  const root = answer?.documentElement;
  if (root?.namespaceURI !== dav || root.localName !== 'multistatus') return undefined;
  return children(root, 'response').flatMap((response) => {
    const name = nameIn(children(response, 'href')[0]?.textContent ?? '', folder);
    if (name === undefined) return [];
    const said = propertiesFound(response);
    const isFolder = said.some((one) => one.localName === 'resourcetype' && children(one, 'collection').length > 0);
    const length = said.find((one) => one.localName === 'getcontentlength')?.textContent?.trim();
    return [{ name, isFolder, ...(!isFolder && length && /^\d+$/.test(length) ? { bytes: Number(length) } : {}) }];
  });
}

/** A href is an absolute path or a whole address (RFC 4918, 8.3), escaped as the server likes, with a slash at the end of a folder. */
function nameIn(href: string, folder: URL): string | undefined {
  let at: URL;
  let within: string;
  try {
    at = new URL(href.trim(), folder);
    within = decodeURIComponent(at.pathname);
  } catch {
    return undefined;
  }
  const above = decodeURIComponent(folder.pathname);
  if (at.host !== folder.host || !within.startsWith(above)) return undefined;
  const name = within.slice(above.length).replace(/\/$/, '');
  return isPlainName(name) ? name : undefined;
}

/** The properties said with success; a property the server does not know stands under a 404 of its own. */
const propertiesFound = (response: Element): Element[] =>
  children(response, 'propstat')
    .filter((one) => / 200\b/.test(children(one, 'status')[0]?.textContent ?? ''))
    .flatMap((one) => children(one, 'prop'))
    .flatMap((one) => [...one.children].filter((child) => child.namespaceURI === dav));

const children = (of: Element, name: string): Element[] =>
  [...of.children].filter((child) => child.namespaceURI === dav && child.localName === name);
