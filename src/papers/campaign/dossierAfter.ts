import { ofCampaign } from '../../engine/campaign';
import { methodsOn } from '../../engine/care';
import { temperatureLog } from '../../engine/heat';
import { addDays } from '../../engine/record';
import { keptThingOf, methodOf } from '../../engine/trade';
import { didItHold, type MonthsHeld, treatedOf, type WatchMark, watchNumbers, watchPlan } from '../../engine/watch';
import { area, date, number, sayReason, w } from '../../words';
import { facts, list, type PaperPiece, say, section, table, under } from '../layout';
import { thingsOfAll } from '../reading';
import { zoneLabel } from '../work/zoneLabel';
import type { CampaignOnPaper } from './campaignOnPaper';
import { paperTold } from './dossierAgreed';
import { daysOfWork, hotDaysIn, layersIn } from './dossierTime';
import { insertsTold } from './insertsTold';

const words = w.paperDossier;

/** What the record shows to have gone another way, her own words, and what the report had to hold. */
export const deviations = (file: CampaignOnPaper, own: string): PaperPiece => {
  const found = [...otherAnswers(file), ...otherAreas(file), ...overLimits(file)];
  return [
    section(
      words.deviations,
      own !== '' && say(own),
      found.length > 0 && say(words.deviationsFound),
      list(found),
      own === '' && found.length === 0 && say(words.deviationsNone),
    ),
    paperTold(file, 'report'),
  ];
};

const otherAnswers = (file: CampaignOnPaper): readonly string[] =>
  ofCampaign(file, 'approval').flatMap(({ body }) => {
    const what = w.campaign.approvals.of[body.of];
    if (body.answer === 'with changes') return [words.changed(what, date(body.date))];
    return body.answer === 'no' ? [words.refusedOnce(what, date(body.date))] : [];
  });

const otherAreas = (file: CampaignOnPaper): readonly string[] => {
  const bid = ofCampaign(file, 'bid').find(({ thing }) => thing === file.campaign.body.takenBid)?.body;
  const lines = ofCampaign(file, 'quantities')[0]?.body.items ?? [];
  return lines.flatMap((line) => {
    const measured = bid?.lines.find(({ item }) => item === line.id)?.measured;
    const outside =
      measured !== undefined && (measured < (line.low ?? line.amount) || measured > (line.high ?? line.amount));
    return outside ? [words.measured(line.name, area(measured), area(line.amount))] : [];
  });
};

/** Readings near or over a limit that a named expert set. */
const overLimits = (file: CampaignOnPaper): readonly string[] =>
  hotDaysIn(file).flatMap(({ thing }) =>
    insertsTold(file).flatMap(({ insert, care, name }) => {
      const readings = file
        .things('insertReading')
        .filter(({ body }) => body.hotDay === thing && body.insert === insert.thing);
      if (readings.length === 0) return [];
      const { level, reasons } = temperatureLog(
        readings.map(({ body }) => body),
        care,
      );
      return level === 'near' || level === 'over' ? reasons.map((reason) => `${name}: ${sayReason(reason)}`) : [];
    }),
  );

/** What is kept of it, and where. */
export const samplesKept = (file: CampaignOnPaper, own: string): PaperPiece => {
  const kept = thingsOfAll(file.source, 'keptWhere')
    .filter(({ body }) => body.sculpture === file.campaign.body.sculpture)
    .map(({ body }) => [
      [keptThingOf(body.sort)?.name ?? body.sort, body.what].filter(Boolean).join(': '),
      body.where,
      body.who ?? '',
      body.found ? date(body.found) : '',
    ]);
  const panels = ofCampaign(file, 'colourCard')
    .filter(({ body }) => body.panel || body.kept)
    .map(({ body }) => [body.panel ?? words.panel, body.kept ?? words.notSaid, '', '']);
  const { sampleColumns: heads } = words;
  const rows = [...panels, ...kept];
  return section(
    words.samples,
    own !== '' && say(own),
    rows.length > 0 &&
      table(
        words.samplesCaption,
        [{ head: heads.what }, { head: heads.where, kind: 'wide' }, { head: heads.who }, { head: heads.found }],
        rows,
      ),
    rows.length === 0 && own === '' && say(words.lacksOf.samples),
  );
};

/** What may and may not be done to it from here on. */
export const careFromHere = (file: CampaignOnPaper, own: string): PaperPiece => {
  const sheet = file.things('methodSheet')[0];
  const { allowed, forbidden, alsoForbidden, usual } = methodsOn(sheet);
  const named = (codes: readonly string[]) => codes.map((code) => methodOf(code)?.name ?? code);
  return section(
    words.care,
    own !== '' && say(own),
    usual && say(w.paperSite.usual, 'small'),
    under(words.careAllowed, list(named(allowed))),
    under(words.careForbidden, list([...named(forbidden), ...alsoForbidden])),
    sheet?.body.setBy && say(words.careBy(sheet.body.setBy, sheet.body.date ? date(sheet.body.date) : '')),
  );
};

export const warrantyTold = ({ campaign: { body } }: CampaignOnPaper): PaperPiece => {
  const { warrantyFacts: names } = words;
  if (!body.warrantyUntil) return section(words.warranty, say(words.warrantyNone));
  return section(
    words.warranty,
    facts([
      [names.until, date(body.warrantyUntil)],
      [names.who, body.warrantyWho],
      [names.terms, body.warrantyTerms],
      [names.look, date(addDays(body.warrantyUntil, -watchNumbers.warrantyBefore.value))],
    ]),
  );
};

const monthsText = ({ low, high }: MonthsHeld): string =>
  w.due.watch.monthsHeld(number(low, 1), high === null ? '' : number(high, 1));
const stateText = ({ state, on, day, from }: WatchMark): string =>
  w.due.watch.state[state](date(state === 'done' ? (on ?? day) : state === 'to come' ? from : day));

/** The looks since the end of the work, and how long each zone held beside what it held before. */
export const watchSince = (file: CampaignOnPaper): PaperPiece => {
  const { record, campaign, work, today } = file;
  const treated = treatedOf(record, file.things('campaign')).find(({ of }) => of === campaign.thing);
  const { began, ended } = daysOfWork(file);
  if (!treated || ended === undefined) return section(words.watch, say(w.due.watch.notOver));
  const held = didItHold(work.figures?.holds ?? [], treated, began);
  const zone = (thing: string) => zoneLabel(record.zones.find((one) => one.thing === thing));
  const { watchColumns, heldColumns } = words;
  return [
    section(
      words.watch,
      table(
        words.watchCaption(date(ended)),
        [{ head: watchColumns.after }, { head: watchColumns.day }, { head: watchColumns.state }],
        watchPlan(record, treated, today).map((mark) => [
          w.due.watch.months(mark.months),
          date(mark.day),
          stateText(mark),
        ]),
      ),
    ),
    held.length > 0 &&
      section(
        words.held,
        table(
          words.heldCaption,
          [
            { head: heldColumns.zone },
            { head: heldColumns.since },
            { head: heldColumns.before },
            { head: heldColumns.word },
          ],
          held.map(({ zone: thing, since, before, word, reasons }) => [
            zone(thing),
            [since ? monthsText(since) : w.due.watch.notTold, reasons[0] && sayReason(reasons[0])]
              .filter(Boolean)
              .join(' – '),
            before.length > 0 ? before.map(monthsText).join('; ') : w.due.watch.notTold,
            w.due.watch.word[word],
          ]),
        ),
        say(words.heldHow, 'small'),
      ),
  ];
};

interface Named {
  readonly who: string;
  readonly what: string;
}

/** Everybody who is named in the record of the campaign, by role, and by name where it is kept. */
export const peopleNamed = (file: CampaignOnPaper): PaperPiece => {
  const who = ({ role, name }: { readonly role: string; readonly name?: string | undefined }) =>
    [name, role].filter(Boolean).join(', ');
  const { peopleOf: what } = words;
  const signed = [...ofCampaign(file, 'approval'), ...ofCampaign(file, 'colourCard')].flatMap(
    ({ body }) => body.signed,
  );
  const bid = ofCampaign(file, 'bid').find(({ thing }) => thing === file.campaign.body.takenBid)?.body;
  const all: readonly Named[] = [
    ...signed.map((one) => ({ who: who(one), what: what.signed })),
    ...(bid?.named ?? []).map((one) => ({ who: who(one), what: what.bid })),
    ...insertsTold(file).flatMap(({ care }) => (care?.limitBy ? [{ who: who(care.limitBy), what: what.limit }] : [])),
    ...hotDaysIn(file).flatMap(({ body }) => [
      { who: who(body.authorisedBy), what: what.authorised },
      ...(body.watcher ? [{ who: who(body.watcher), what: what.watcher }] : []),
    ]),
    ...layersIn(file).flatMap(({ body }) => (body.by ? [{ who: body.by, what: what.by }] : [])),
  ];
  const rows = new Map<string, Set<string>>();
  for (const one of all) rows.set(one.who, (rows.get(one.who) ?? new Set()).add(one.what));
  if (rows.size === 0) return undefined;
  return section(
    words.people,
    table(
      words.peopleCaption,
      [{ head: words.peopleColumns.who }, { head: words.peopleColumns.what, kind: 'wide' }],
      [...rows].map(([one, whats]) => [one, [...whats].join('; ')]),
    ),
  );
};
