import type { BagContents, PaperFile } from '../device/bag';
import { date, list, tongueNow, w, whole } from '../words';
import { type Html, html } from './html';
import { thingsIn } from './reading';
import { reportStyle } from './reportStyle';
import { surveyRead } from './surveyRead';
import { anchorOf, workSection } from './workSection';

const words = w.papers;

/**
 * The survey as one page of HTML, to be read in any browser without this app and without a network: its style is in it, it runs no
 * script, and its pictures are those in the bag it lies in. Everything a person wrote stands in it as text.
 */
export const reportHtml = (contents: BagContents, papers: readonly PaperFile[] = []): string => {
  const survey = surveyRead(contents);
  const rounds = survey.works.reduce((sum, { record }) => sum + record.rounds.length, 0);
  const photos = survey.works.reduce((sum, { within }) => sum + thingsIn(within, 'photo').length, 0);
  const counts = words.holds(
    words.works(survey.works.length, whole(survey.works.length)),
    words.rounds(rounds, whole(rounds)),
    words.photos(photos, whole(photos)),
  );
  const { leftOut, missing } = contents;
  const page = html`<!doctype html>
<html lang="${tongueNow().language}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src 'self' file: blob:">
<meta name="viewport" content="width=device-width">
<title>${words.title}: ${survey.name}</title>
<style>${reportStyle}</style>
</head>
<body>
<header><h1>${words.title}</h1><p class="name">${survey.name}</p>
${survey.invented && html`<p class="mark">${words.invented}</p>`}
<p>${words.made(date(contents.made))} ${counts}</p>
${leftOut.length > 0 && html`<p>${words.leftOut(list(leftOut.map((what) => words.leftOutNames[what])))}</p>`}
${missing.length > 0 && html`<p>${words.missing(missing.length, whole(missing.length))}</p>`}
</header>
<main>
<section><h2>${words.readIt}</h2>${words.readItWhat.map((line) => html`<p>${line}</p>`)}<p class="mark">${words.care}</p></section>
${survey.works.length > 0 && html`<nav><h2>${words.contents}</h2><ol>${survey.works.map(tocLine)}</ol></nav>`}
${papers.length > 0 && html`<nav><h2>${words.papers}</h2><p>${words.papersWhat}</p><ul>${papers.map(paperLine)}</ul></nav>`}
${survey.works.map((work) => workSection(work, contents))}
</main>
</body>
</html>
`;
  return page.html;
};

const tocLine = (work: Parameters<typeof workSection>[0]): Html => {
  const { title, number } = work.record.sculpture.body;
  return html`<li><a href="#${anchorOf(work)}">${title}</a> ${number}</li>`;
};

const paperLine = ({ path, title, over }: PaperFile): Html =>
  html`<li><a href="${path.replace(/^data\//, '')}">${title}</a> ${over}</li>`;
