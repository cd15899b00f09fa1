import { type SculptureScore, scoreRound, type ZoneScore } from '../engine/condition';
import { areaOn, type BodyOf, type SculptureRecord, type Thing, zonesAt } from '../engine/record';
import { activityOf, kindOf, originOf, roundTypes, severityOf } from '../engine/trade';
import { area, date, figure, fromTo, midSentence, share, w } from '../words';
import { type Html, html, lines } from './html';

const words = w.papers;

export const roundName = (type: string): string => roundTypes.find(({ id }) => id === type)?.name ?? type;

const ranged = (score: { readonly value: number; readonly low: number; readonly high: number }): string => {
  const { value, range } = figure(score);
  return words.range(value, range);
};

export const indexOf = ({ value, low, high }: SculptureScore): string =>
  value === null || low === null || high === null ? words.notScored : ranged({ value, low, high });

/** The last round in full: what was looked at, zone by zone. */
export const lastRound = (record: SculptureRecord, round: Thing<'round'>): Html => {
  const score = scoreRound(record, round.thing);
  const { type, wet, washed, note } = round.body;
  const scored = new Map(score.zones.map((zone) => [zone.zone, zone]));
  const active = Object.entries(words.activeNames).flatMap(([what, name]) => {
    const figureOf = score.active[what as keyof typeof words.activeNames];
    return figureOf.value > 0
      ? [`${name} ${area(figureOf.value)} (${fromTo(area(figureOf.low), area(figureOf.high))})`]
      : [];
  });
  return html`<h3>${words.lastRound(roundName(type), date(round.body.date))}</h3>
<p>${words.surface(w.paperCondition.wet[wet], w.paperCondition.washed[washed])} ${words.seen(share(score.seenShare))}</p>
${round.body.fromPaper && html`<p>${w.paperCards.enteredFromPaper(date(round.body.fromPaper.entered), '')}</p>`}
<p class="figure">${words.index} <strong>${indexOf(score)}</strong></p>
${active.length > 0 && html`<p>${words.active}: ${active.join('; ')}.</p>`}
${note && html`<p>${lines(note)}</p>`}
<table><thead><tr>${[words.columns.zone, words.columns.area, words.columns.index, words.columns.seen, words.columns.finding].map((head) => html`<th scope="col">${head}</th>`)}</tr></thead>
<tbody>${zonesAt(record, round.body.date).map((zone) => zoneRow(record, round, zone, scored.get(zone.thing)))}</tbody></table>
`;
};

const zoneRow = (
  record: SculptureRecord,
  round: Thing<'round'>,
  zone: Thing<'zone'>,
  score: ZoneScore | undefined,
): Html => {
  const isHere = ({ body }: { readonly body: { readonly round: string; readonly zone: string } }): boolean =>
    body.round === round.thing && body.zone === zone.thing;
  const visit = record.visits.find(isHere);
  const findings = record.findings.filter(isHere);
  return html`<tr><th scope="row">${zone.body.letter}, ${zone.body.name}</th><td class="whole">${area(areaOn(zone, round.body.date).m2)}</td>
<td class="whole">${score ? ranged(score) : words.notScored}</td><td>${visit ? words.states[visit.body.state] : words.notVisited}${visit?.body.note && html`<br>${lines(visit.body.note)}`}</td>
<td>${findings.length > 0 && html`<ul>${findings.map(({ body }) => html`<li>${findingText(body)}${body.note && html`<br>${lines(body.note)}`}</li>`)}</ul>`}</td></tr>
`;
};

const findingText = (body: BodyOf<'finding'>): string =>
  [
    kindOf(body.kind)?.name ?? body.kind,
    originOf(body.origin)?.name ?? body.origin,
    body.cleared && words.cleared,
    body.carriedFrom && words.carried,
    body.coverage && words.of(share(body.coverage.value), share(body.coverage.low), share(body.coverage.high)),
    body.count && words.count[body.count],
    !body.cleared && (severityOf(body.severity)?.name ?? body.severity),
    !body.cleared && (activityOf(body.activity)?.name ?? body.activity),
  ]
    .filter((part) => typeof part === 'string')
    .map((part, i) => (i === 0 ? part : midSentence(part)))
    .join(', ');

/** Rounds before the last, a line each. */
export const earlierRounds = (record: SculptureRecord): Html | undefined => {
  const before = record.rounds.slice(0, -1).reverse();
  if (before.length === 0) return undefined;
  const { date: day, type, index, looked } = words.roundColumns;
  return html`<h3>${words.earlier}</h3>
<table><thead><tr>${[day, type, index, looked].map((head) => html`<th scope="col">${head}</th>`)}</tr></thead>
<tbody>${before.map((round) => {
    const score = scoreRound(record, round.thing);
    return html`<tr><td>${date(round.body.date)}</td><td>${roundName(round.body.type)}</td><td>${indexOf(score)}</td><td>${share(score.seenShare)}</td></tr>
`;
  })}</tbody></table>
`;
};
