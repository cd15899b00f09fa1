import type { PaperSource } from '../../engine/reckoning';
import { groundsTopicOf, keptThingOf } from '../../engine/trade';
import { date, w } from '../../words';
import { facts, list, type PaperPiece, room, say, section, table, under } from '../layout';
import { nameOfWork, personIn, thingsIn, thingsOfAll, workOf } from '../reading';

const words = w.paperLetter;
/** Copies of papers that a letter has room for: the latest. */
const most = 12;

interface KeptRow {
  readonly what: string;
  readonly of: string;
  readonly where: string;
  readonly who: string;
}

/** Things written down as kept somewhere, with panels of agreed colours. */
const keptRows = (source: PaperSource): readonly KeptRow[] => {
  const workNamed = (sculpture: string | undefined): string => {
    const work = sculpture ? workOf(source, sculpture) : undefined;
    return work ? nameOfWork(work) : '';
  };
  const written = thingsOfAll(source, 'keptWhere').map(({ body }) => ({
    what: [keptThingOf(body.sort)?.name ?? body.sort, body.what].filter(Boolean).join(': '),
    of: workNamed(body.sculpture),
    where: [body.where, body.found && words.seenOn(date(body.found))].filter(Boolean).join(', '),
    who: body.who ?? '',
  }));
  const panels = thingsOfAll(source, 'colourCard').flatMap(({ body }) =>
    body.kept
      ? [{ what: words.keptPanel(body.panel ?? ''), of: workNamed(body.sculpture), where: body.kept, who: '' }]
      : [],
  );
  return [...written, ...panels];
};

export const isKeptSaid = (source: PaperSource): boolean => keptRows(source).length > 0;

/** Where things are kept; room to write where nothing is. */
export const kept = (source: PaperSource): PaperPiece => {
  const rows = keptRows(source);
  const { what, of, where, who } = words.keptColumns;
  return section(
    words.kept,
    rows.length === 0 ? say(words.keptNone) : undefined,
    rows.length === 0
      ? room(words.keptRoom, 5)
      : table(
          '',
          [{ head: what }, { head: of }, { head: where }, { head: who }],
          rows.map((row) => [row.what, row.of, row.where, row.who]),
        ),
  );
};

/** Everybody the record names, by role, and what for. */
export const people = (source: PaperSource): PaperPiece => {
  const said = new Map<string, string[]>();
  const add = (who: string, what: string) => {
    const all = said.get(who) ?? [];
    if (who && !all.includes(what)) said.set(who, [...all, what]);
  };
  const inRole = ({ role, name }: { readonly role: string; readonly name?: string | undefined }) =>
    [role, name].filter(Boolean).join(', ');
  for (const { thing } of thingsIn(source.around, 'surveyor')) add(personIn(source, thing), words.surveyor);
  for (const { body } of thingsOfAll(source, 'decision'))
    for (const one of body.consulted) add(inRole(one), words.consulted(body.title));
  for (const { body } of thingsOfAll(source, 'campaign'))
    if (body.warrantyWho && (body.warrantyUntil ?? '') >= source.today)
      add(body.warrantyWho, words.promised(body.title));
  for (const { body } of thingsOfAll(source, 'groundsAgreement'))
    if (!body.ended) add(inRole(body.who), words.grounds(groundsTopicOf(body.topic)?.name ?? body.topic));
  const byPurpose = new Map<string, string[]>();
  for (const [who, what] of said) byPurpose.set(what.join('; '), [...(byPurpose.get(what.join('; ')) ?? []), who]);
  const rows = [...byPurpose].map(([what, who]) => [who.join(', '), what] as const);
  const contacts = contactsOf(source);
  return section(words.people, facts(rows), contacts !== undefined && under(words.contacts, say(contacts)));
};

/** Whom to call, from the latest plan of a year that says so. */
export const contactsOf = ({ around }: PaperSource): string | undefined =>
  thingsIn(around, 'yearPlan')
    .sort((a, b) => b.body.year - a.body.year)
    .find(({ body }) => body.contacts)?.body.contacts;

export const papersOut = (source: PaperSource): PaperPiece => {
  const rows = thingsOfAll(source, 'paperIssued')
    .sort((a, b) => b.body.date.localeCompare(a.body.date))
    .slice(0, most);
  return section(
    words.papersOut,
    rows.length === 0
      ? say(words.papersOutNone)
      : list(rows.map(({ body }) => words.papersOutRow(date(body.date), body.title, body.to ?? ''))),
  );
};
