import type { Desk } from '../desk';
import { type Prepared, preparedName } from './prepareSurvey';

/** A paper as one HTML file, ready to be saved as any other file. `name` says which: "SW-02-condition-report". */
export const preparePaper = (
  desk: Desk,
  { name, html }: { readonly name: string; readonly html: string },
): Prepared => ({
  name: preparedName(desk, `${name.replace(/[^\p{L}\p{N}._-]+/gu, '-')}.html`),
  mime: 'text/html',
  bytes: new TextEncoder().encode(html),
  entries: 0,
  holds: [],
  photosStay: 0,
  keptAtHome: 0,
  made: desk.store.made,
});
