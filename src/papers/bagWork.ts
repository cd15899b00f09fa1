/** Bags are written, read and checked here, beside the page. */
import { checking, opening, serve, writing } from '../device/bag/inWorker';
import { papersInBag } from './papersInBag';
import { readmeText } from './readme';
import { reportHtml } from './report';
import { schemaText } from './schemaText';

serve({
  write: writing({ report: reportHtml, papers: papersInBag, readme: readmeText, schema: schemaText }),
  check: checking,
  open: opening,
});
