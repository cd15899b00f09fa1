import type { PaperSource } from '../../engine/reckoning';
import { date, list as inWords, w, whole } from '../../words';
import { close, list, type PaperPiece, type PaperSort, say, section, signatures } from '../layout';
import { ownText, thingsOfAll } from '../reading';
import { decisions, openCauses } from './letterDecisions';
import { leftOut } from './letterNotLooked';
import { contactsOf, isKeptSaid, kept, papersOut, people } from './letterPeople';
import { promised } from './letterPromised';
import { tripwires, watchZones } from './letterWatch';
import { worries } from './letterWorries';

const words = w.paperLetter;
const id = 'letter-to-successor';
const longest = 6000;

/** What whoever comes after has to know: drafted from the record, begun and ended by her own words. */
export const successorLetter: PaperSort = {
  id,
  about: 'collection',
  pages: [2, 4],
  title: words.title,
  reader: words.reader,
  speaksOf: ['access', 'money'],
  choices: ({ works, collection, name }) => (works.length > 0 ? [{ about: collection, label: name }] : []),
  make: (source, about) => {
    if (about !== source.collection) return undefined;
    const begin = ownText(source, id, about, 'begin');
    const end = ownText(source, id, about, 'end');
    return {
      title: words.title,
      over: source.name,
      number: source.name,
      state: source.state,
      own: [
        { part: 'begin', label: words.own.begin, hint: words.own.beginHint, text: begin, longest },
        { part: 'end', label: words.own.end, hint: words.own.endHint, text: end, longest },
      ],
      lacks: lacksOf(source, begin + end),
      body: [
        close(
          begin !== '' && say(begin, 'lead'),
          say(lead(source)),
          leftOut(source),
          worries(source),
          watchZones(source),
          tripwires(source),
          decisions(source),
          openCauses(source),
          promised(source),
          kept(source),
          people(source),
          papersOut(source),
          archive(source),
          end !== '' && say(end),
          signatures([{ role: words.signed }]),
        ),
      ],
    };
  },
};

const lead = ({ works, name }: PaperSource): string => {
  const days = works.flatMap(({ record }) => record.rounds.map(({ body }) => body.date)).sort();
  const zones = works.reduce((sum, { record }) => sum + record.zones.length, 0);
  const [first, last] = [days[0], days.at(-1)];
  const ofWorks = words.works(works.length, whole(works.length));
  return first && last
    ? words.lead(name, ofWorks, words.zones(zones, whole(zones)), date(first), date(last))
    : words.leadNoRound(name, ofWorks);
};

const archive = (source: PaperSource): PaperPiece => {
  const copies = thingsOfAll(source, 'keptWhere').filter(({ body }) => body.sort === 'archive copy');
  return section(
    words.archive,
    copies.length > 0 && say(words.archiveWhere(inWords(copies.map(({ body }) => body.where)))),
    list([...words.archiveWhat], 'ol'),
  );
};

const lacksOf = (source: PaperSource, own: string): string[] => [
  ...(own === '' ? [words.lacks.own] : []),
  ...(isKeptSaid(source) ? [] : [words.lacks.kept]),
  ...(thingsOfAll(source, 'decision').length > 0 ? [] : [words.lacks.decisions]),
  ...(contactsOf(source) ? [] : [words.lacks.contacts]),
];
