import { readFile } from 'node:fs/promises';
import { papersInBag, readmeText, reportHtml } from '../../src/papers';

/** The papers of a bag as the worker has them; the published schema is read from where the build takes it. */
export const bagPapers = {
  report: reportHtml,
  papers: papersInBag,
  readme: readmeText,
  schema: () => readFile('public/survey.schema.json', 'utf8'),
};
