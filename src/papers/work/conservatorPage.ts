import type { WorkOnPaper } from '../../engine/reckoning';
import { findingsOf, type Thing } from '../../engine/record';
import { kindOf } from '../../engine/trade';
import { list as joined, type NameOfThing, sayReason, thingNames, w } from '../../words';
import {
  boxes,
  h,
  list,
  type PaperPiece,
  type PaperSort,
  room,
  say,
  section,
  signatures,
  table,
  thought,
  together,
  under,
} from '../layout';
import { nameOfWork, ownText, workOf, worksToChoose } from '../reading';
import { viewsOf } from '../views';
import { factsOfWork } from './conditionFacts';
import { conservatorQuestions } from './conservatorQuestions';
import { type LatestOnPaper, latestOnPaper } from './latestOnPaper';
import { notLookedFirst } from './notLookedFirst';
import { openDangers } from './openDangers';
import { saidOfFinding } from './saidOfFinding';
import { thoughtLine, thoughtsOf } from './seenAndThought';
import { zoneLabel } from './zoneLabel';

const words = w.paperConservator;
const id = 'conservator-page';

/** A page that asks a conservator, with room to answer by hand. Typed in, each answer is a thought under that name. */
export const conservatorPage: PaperSort = {
  id,
  about: 'work',
  pages: [2, 4],
  title: words.title,
  reader: words.reader,
  choices: worksToChoose,
  make: (source, about) => {
    const work = workOf(source, about);
    if (!work) return undefined;
    const { record } = work;
    const latest = latestOnPaper(work);
    const nameOf = thingNames(record, []);
    const question = ownText(source, id, about, 'question');
    return {
      title: words.title,
      over: nameOfWork(work),
      number: record.sculpture.body.number,
      state: work.state,
      scale: latest?.score.scale,
      body: [
        notLookedFirst(latest),
        openDangers(record, latest?.classes, nameOf),
        say(words.lead),
        question !== '' && section(words.question, say(question, 'lead')),
        latest && whyWeAsk(work, latest, nameOf),
        section(w.paperCondition.what, factsOfWork(work, latest, 'short')),
        thoughtSoFar(work),
        toDrawOn(work),
        howSeen(),
        section(
          words.answers,
          conservatorQuestions.map((code) => room(words.questions[code].ask, 3)),
        ),
        signatures([{ role: words.signs }]),
      ],
      own: [{ part: 'question', label: words.question, hint: words.questionHint, text: question, longest: 2000 }],
      lacks: [!latest && words.lacks.noRound, question === '' && words.lacks.question].filter(
        (line) => typeof line === 'string',
      ),
    };
  },
};

/** The conditions of looking, to tick. */
const howSeen = (): PaperPiece =>
  together(
    section(
      words.viewing,
      under(words.surface, boxes(words.surfaces)),
      under(words.light, boxes(words.lights)),
      under(words.reach, boxes(words.reaches)),
      room(words.samples, 2),
      room(words.nameAndOffice, 1),
    ),
  );

/** Zones with a stop word, or on which wax does not hold, with what was seen there; what asks of the whole. */
const whyWeAsk = (work: WorkOnPaper, latest: LatestOnPaper, nameOf: NameOfThing): PaperPiece => {
  const { classes, record, round } = latest;
  const noHold = new Set(
    (work.figures?.advice ?? []).filter(({ asksConservator }) => asksConservator).map(({ zone }) => zone),
  );
  const rows = latest.zones.flatMap((zone) => {
    const kinds = classes.zones.find(({ about }) => about === zone.thing)?.stopWords ?? [];
    const why = [
      kinds.length > 0 && words.stopWord(joined([...new Set(kinds)].map((kind) => kindOf(kind)?.name ?? kind))),
      noHold.has(zone.thing) && words.noHold,
    ].filter((line) => typeof line === 'string');
    return why.length > 0 ? [[zoneLabel(zone), seenThere(record, round, zone), why.join(' ')]] : [];
  });
  const ofWhole = classes.sculpture.recommendation.askConservator.map((reason) => sayReason(reason, nameOf));
  const { zone, seen, why } = words.askColumns;
  return section(
    words.ask,
    list(ofWhole),
    rows.length === 0 && ofWhole.length === 0 && say(words.askNone),
    rows.length > 0 && table(words.askCaption, [{ head: zone }, { head: seen, kind: 'wide' }, { head: why }], rows),
    rows.length > 0 && say(words.askHow, 'small'),
  );
};

const seenThere = (record: LatestOnPaper['record'], round: Thing<'round'>, zone: Thing<'zone'>): PaperPiece => {
  const findings = findingsOf(record, round.thing, zone.thing).filter(({ body }) => !body.cleared);
  return list(findings.map(({ body }) => saidOfFinding(body))) ?? '–';
};

/** The outlines without a hatch, large enough to mark. */
const toDrawOn = (work: WorkOnPaper): PaperPiece => {
  const views = viewsOf(work);
  return views.map(({ side, drawing }, i) =>
    together(
      ...(i === 0 ? [h('h2', {}, words.views), say(words.viewsHow, 'small')] : []),
      h(
        'div',
        { class: 'pictures pair views' },
        h('figure', {}, drawing, h('figcaption', {}, w.paperViews.drawn(side))),
        room(words.viewNotes, 8),
      ),
    ),
  );
};

const thoughtSoFar = (work: WorkOnPaper): PaperPiece => {
  const thoughts = thoughtsOf(work);
  return (
    thoughts.length > 0 &&
    section(words.before, thought(list(thoughts.slice(0, 6).map((each) => thoughtLine(work, each)))))
  );
};
