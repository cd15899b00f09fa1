import type { PaperSource, WorkOnPaper } from '../../engine/reckoning';
import { causeOf, kindOf } from '../../engine/trade';
import { stopWordsSeen } from '../../engine/watch';
import { date, w } from '../../words';
import { list, type PaperPiece, type PaperSort, room, say, section, thought } from '../layout';
import { nameOfWork, ownText, thingsIn, workOf, worksToChoose } from '../reading';
import { latestOnPaper } from '../work/latestOnPaper';
import { notLookedFirst } from '../work/notLookedFirst';
import { lettersSaid, zoneOf } from './namesIn';
import { bagIndex, holdTimes, productsUsed } from './packetTables';

const words = w.paperPacket;
const id = 'conservator-packet';

/** The page that goes with a bag of one work: what lies in it and what is asked. The bag itself is made beside it. */
export const conservatorPacket: PaperSort = {
  id,
  about: 'work',
  pages: [1, 3],
  title: words.title,
  reader: words.reader,
  withBag: true,
  choices: worksToChoose,
  make: (source, about) => {
    const work = workOf(source, about);
    if (!work) return undefined;
    const { record, within } = work;
    const own = ownText(source, id, about, 'questions');
    const drafted = questionsOf(source, work);
    const asked = own.trim() ? own.split('\n').filter((line) => line.trim()) : drafted;
    return {
      title: words.title,
      over: nameOfWork(work),
      number: record.sculpture.body.number || record.sculpture.body.title,
      state: work.state,
      own: [
        {
          ...{ part: 'questions', label: words.own.questions, hint: words.own.questionsHint },
          ...{ text: own, drafted: drafted.join('\n'), longest: 4000 },
        },
      ],
      lacks: [
        ...(thingsIn(within, 'photo').length > 0 ? [] : [words.lacks.photos]),
        ...(record.looks.length > 0 ? [] : [words.lacks.looks]),
      ],
      body: [
        say(words.lead),
        notLookedFirst(latestOnPaper(work)),
        section(words.questions, asked.length > 0 ? list(asked, 'ol') : say(words.questionsNone), room(words.room, 3)),
        bagIndex(work),
        productsUsed(work),
        holdTimes(work),
        causesOf(work),
        thoughtsOf(work),
      ],
    };
  },
};

/** What the record cannot answer, as questions: never a diagnosis. */
const questionsOf = ({ today }: PaperSource, work: WorkOnPaper): string[] => {
  const since = `${Number(today.slice(0, 4)) - 1}${today.slice(4)}`;
  const told = new Set<string>();
  const stops = stopWordsSeen(work.record, since).flatMap(({ zone, kind, date: day }) => {
    const key = `${zone} ${kind}`;
    if (told.has(key)) return [];
    told.add(key);
    return [words.stop(zoneOf(work, zone), kindOf(kind)?.name ?? kind, date(day))];
  });
  const holds = (work.figures?.advice ?? []).flatMap(({ zone, asksConservator }) =>
    asksConservator ? [words.holds(zoneOf(work, zone))] : [],
  );
  const causes = thingsIn(work.within, 'cause').flatMap(({ body }) =>
    body.state === 'open' || body.state === 'cannot be removed'
      ? [words.cause(causeOf(body.sort)?.name ?? body.sort, lettersSaid(work, body.zones))]
      : [],
  );
  return [...stops, ...holds, ...causes];
};

const causesOf = (work: WorkOnPaper): PaperPiece => {
  const rows = thingsIn(work.within, 'cause').map(({ body }) =>
    words.causeRow(
      causeOf(body.sort)?.name ?? body.sort,
      lettersSaid(work, body.zones),
      w.campaign.causes.states[body.state],
      date(body.found),
      body.seen ?? '',
    ),
  );
  return section(words.causes, rows.length > 0 ? list(rows) : say(words.causesNone));
};

const thoughtsOf = (work: WorkOnPaper): PaperPiece => {
  const rows = thingsIn(work.within, 'interpretation').map(({ body }) =>
    words.thoughtRow(body.statement, body.by, date(body.date)),
  );
  return thought(rows.length > 0 ? list(rows) : say(words.thoughtNone));
};
