import type { BagContents } from '../device/bag';
import { date, w } from '../words';
import { surveyRead } from './surveyRead';

const words = w.papers.readme;
/** Columns, so that it reads well wherever text is shown. */
const width = 76;

const wrapped = (text: string, indent = ''): string[] => {
  const lines: string[] = [];
  let line = indent;
  for (const word of text.split(' ')) {
    if (line.length > indent.length && line.length + 1 + word.length > width) {
      lines.push(line);
      line = indent;
    }
    line += line.length > indent.length ? ` ${word}` : word;
  }
  return [...lines, line];
};

const headed = (title: string, lines: readonly string[]): string[] => [title, '-'.repeat(title.length), ...lines, ''];

/** README.txt of a bag: what lies in it and how it is read without this app. Lines end as every system reads them. */
export const readmeText = (contents: BagContents): string => {
  const { name, invented } = surveyRead(contents);
  const papers = w.papers;
  const lines = [
    words.head,
    '='.repeat(words.head.length),
    '',
    ...wrapped(words.of(name, date(contents.made))),
    ...(invented ? wrapped(papers.invented) : []),
    ...(contents.leftOut.length > 0
      ? wrapped(papers.leftOut(contents.leftOut.map((what) => papers.leftOutNames[what]).join(', ')))
      : []),
    ...wrapped(words.secrets),
    '',
    ...wrapped(words.what),
    '',
    ...headed(
      words.files,
      words.rows.flatMap(([path, what]) => [path, ...wrapped(what, '    ')]),
    ),
    ...headed(words.check, wrapped(words.checkWhat)),
    ...headed(
      words.json,
      words.jsonWhat.flatMap((line) => [...wrapped(line), '']),
    ),
    ...(contents.missing.length > 0 ? headed(words.missing, [...contents.missing].sort()) : []),
    ...wrapped(papers.care),
    '',
  ];
  return lines.join('\r\n');
};
