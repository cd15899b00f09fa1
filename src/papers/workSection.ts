import type { BagContents } from '../device/bag';
import { idPart, type SculptureRecord, vagueDateOrder } from '../engine/record';
import { treatmentOf } from '../engine/trade';
import { date, list, w, whole } from '../words';
import { type Html, html, lines } from './html';
import { thingsIn } from './reading';
import { earlierRounds, lastRound } from './roundSection';
import type { WorkRead } from './surveyRead';

const words = w.papers;

export const anchorOf = ({ record }: WorkRead): string => `work-${idPart(record.sculpture.thing)}`;

/** One work: what it is, the last round, the rounds before, the logbook, what is open, photos, and apart from it what was thought. */
export const workSection = (work: WorkRead, { photos }: BagContents): Html => {
  const { record, within } = work;
  const { title, number } = record.sculpture.body;
  const last = record.rounds.at(-1);
  const waiting = record.unsettled.length;
  return html`<section id="${anchorOf(work)}"><h2>${title} <small>${number}</small></h2>
${facts(work)}
${waiting > 0 && html`<p class="mark">${words.settle(waiting)}</p>`}
${last ? lastRound(record, last) : html`<p>${words.noRound}</p>`}
${earlierRounds(record)}
${logbook(record)}
${checks(record)}
${inserts(record)}
${pictures(within, new Map(photos.map(({ sha256, path }) => [sha256, path])))}
${thoughts(work)}
${record.unknown.length > 0 && html`<p>${words.unknown(record.unknown.length)}</p>`}
</section>
`;
};

const facts = ({ record, within }: WorkRead): Html => {
  const { number, maker, date: made, materials, dimensions, note } = record.sculpture.body;
  const rows: readonly (readonly [string, string | undefined])[] = [
    [words.facts.number, number],
    [words.facts.maker, maker],
    [words.facts.date, made && date(made)],
    [words.facts.materials, materials],
    [words.facts.dimensions, dimensions],
    [words.facts.place, thingsIn(within, 'place')[0]?.body.text],
    [words.facts.access, thingsIn(within, 'access')[0]?.body.text],
    [words.facts.note, note],
  ];
  return html`<dl>${rows.map(([name, text]) => text && html`<dt>${name}</dt><dd>${lines(text)}</dd>`)}</dl>`;
};

interface LogRow {
  readonly date: string;
  readonly what: string;
  readonly where: string;
  readonly details: string;
}

const logbook = (record: SculptureRecord): Html | undefined => {
  const letterOf = (zone: string) => record.zones.find(({ thing }) => thing === zone)?.body.letter ?? '?';
  const rows: LogRow[] = [
    ...record.treatments.map(({ body }) => ({
      date: body.date,
      what: treatmentOf(body.type)?.name ?? body.type,
      where: body.zones.length > 0 ? list(body.zones.map(letterOf)) : words.whole,
      details: [body.product, body.coats && w.logbook.coatsOf(String(body.coats)), body.by, body.note]
        .filter(Boolean)
        .join('; '),
    })),
    ...record.looks.map(({ body }) => ({
      date: body.date,
      what: words.look(w.logbook.results[body.result]),
      where: letterOf(body.zone),
      details: body.note ?? '',
    })),
  ].sort((a, b) =>
    vagueDateOrder(a.date) < vagueDateOrder(b.date) ? 1 : vagueDateOrder(a.date) > vagueDateOrder(b.date) ? -1 : 0,
  );
  if (rows.length === 0) return undefined;
  const { date: day, what, where, details } = words.logColumns;
  return html`<h3>${words.logbook}</h3>
<table><thead><tr>${[day, what, where, details].map((head) => html`<th scope="col">${head}</th>`)}</tr></thead>
<tbody>${rows.map(
    (
      row,
    ) => html`<tr><td>${date(row.date)}</td><td>${row.what}</td><td>${row.where}</td><td>${lines(row.details)}</td></tr>
`,
  )}</tbody></table>
`;
};

const checks = ({ personChecks }: SculptureRecord): Html | undefined =>
  personChecks.length === 0
    ? undefined
    : html`<h3>${words.checks}</h3><ul>${personChecks.map(
        ({ body: { what, opened, closed } }) =>
          html`<li>${date(opened)}: ${what} (${closed ? words.checkClosed(date(closed.on), closed.by) : words.checkOpen})</li>`,
      )}</ul>
`;

const inserts = (record: SculptureRecord): Html | undefined =>
  record.inserts.length === 0
    ? undefined
    : html`<h3>${words.inserts}</h3><ul>${record.inserts.map(
        ({ body }) =>
          html`<li>${words.insert(whole(body.count), body.material)}${body.note && html`: ${body.note}`}</li>`,
      )}</ul>
`;

const pictures = (within: WorkRead['within'], paths: ReadonlyMap<string, string>): Html | undefined => {
  const photos = thingsIn(within, 'photo');
  if (photos.length === 0) return undefined;
  const letters = new Map(thingsIn(within, 'zone').map(({ thing, body }) => [thing, body.letter]));
  const stations = new Map(thingsIn(within, 'station').map(({ thing, body }) => [thing, body.letter]));
  const days = new Map(thingsIn(within, 'round').map(({ thing, body }) => [thing, date(body.date)]));
  const of = (names: ReadonlyMap<string, string>, thing: string | undefined) => thing && names.get(thing);
  return html`<h3>${words.pictures}</h3><div class="pictures">${photos.map(({ body }) => {
    const caption = [
      `${words.roles[body.role]} ${of(letters, body.zone) ?? of(stations, body.station) ?? ''}`.trim(),
      of(days, body.round) ?? (body.taken && date(body.taken.slice(0, 10))),
      body.note,
    ];
    // The report lies beside the folder of photos, both under data/.
    const path = paths.get(body.sha256)?.replace(/^data\//, '');
    const shown = path
      ? html`<a href="${path}"><img src="${path}" alt="" loading="lazy"></a>`
      : html`<p>${words.notHere}</p>`;
    return html`<figure>${shown}<figcaption>${caption.filter(Boolean).join(', ')}</figcaption></figure>
`;
  })}</div>
`;
};

/** What was seen and what was thought never mix. */
const thoughts = ({ record, within }: WorkRead): Html | undefined => {
  const statements = thingsIn(within, 'interpretation');
  if (statements.length === 0) return undefined;
  const zones = new Map(record.zones.map(({ thing, body }) => [thing, w.sculptures.zone.edit(body.letter, body.name)]));
  return html`<aside><h3>${words.thought}</h3><ul>${statements.map(
    ({ body: { statement, by, date: when, about, source } }) =>
      html`<li>${about && zones.has(about) && html`${zones.get(about)}: `}${lines(statement)} <small>${[by, date(when), source].filter(Boolean).join(', ')}</small></li>`,
  )}</ul></aside>
`;
};
