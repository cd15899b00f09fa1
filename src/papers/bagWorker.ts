/** The worker: bags are written, read and checked here, beside the page. */
import { checking, opening, serve, writing } from '../device/bag/inWorker';
import { readmeText } from './readme';
import { reportHtml } from './report';

serve({ write: writing({ report: reportHtml, readme: readmeText }), check: checking, open: opening });
