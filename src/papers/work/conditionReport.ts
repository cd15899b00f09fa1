import { thingNames, w } from '../../words';
import { type PaperPiece, type PaperSort, say, section, signatures } from '../layout';
import { nameOfWork, ownText, personIn, thingsOfAll, workOf, worksToChoose } from '../reading';
import { comparison } from './comparison';
import { lightOf, photosOfRound, theSurvey, theWork } from './conditionFacts';
import { classTable, conditionFigures } from './conditionFigures';
import { earlierRounds } from './earlierRounds';
import { latestOnPaper } from './latestOnPaper';
import { markedViews } from './markedViews';
import { notLookedFirst } from './notLookedFirst';
import { openDangers } from './openDangers';
import { photosOnPaper } from './photosOnPaper';
import { seenAndThought } from './seenAndThought';
import { zoneByZone } from './zoneByZone';

const words = w.paperCondition;
const id = 'condition-report';

/** The condition report of one work, after the contents of EN 16095:2012; classes after EN 16096:2012. */
export const conditionReport: PaperSort = {
  id,
  about: 'work',
  pages: [3, 6],
  title: words.title,
  reader: words.reader,
  choices: worksToChoose,
  make: (source, about) => {
    const work = workOf(source, about);
    if (!work) return undefined;
    const { record } = work;
    const latest = latestOnPaper(work);
    const nameOf = thingNames(
      record,
      thingsOfAll(source, 'surveyor').map(({ thing, body }) => ({ thing, role: body.role })),
    );
    const own = (part: string) => ownText(source, id, about, part);
    const drafted = latest ? words.purposes[latest.round.body.type] : '';
    const surveyor = latest ? personIn(source, latest.round.body.surveyor) : '';
    const body: PaperPiece[] = [
      notLookedFirst(latest),
      openDangers(record, latest?.classes, nameOf),
      theWork(work, latest),
    ];
    if (latest)
      body.push(
        theSurvey(source, work, latest, { purpose: own('purpose') || drafted, light: own('light') }),
        section(
          words.condition,
          own('summary') !== '' && say(own('summary'), 'lead'),
          ...[conditionFigures(latest)].flat(),
          ...[classTable(latest, nameOf)].flat(),
        ),
        markedViews(work, latest),
        zoneByZone(latest),
        photosOnPaper(work, latest),
        comparison(latest, nameOf),
        earlierRounds(latest),
        seenAndThought(work, latest),
        section(
          words.signs,
          signatures([{ role: words.signExaminer, name: surveyor || undefined }, { role: words.signReceiver }]),
        ),
      );
    const photos = latest ? photosOfRound(work, latest.round.thing) : [];
    return {
      title: words.title,
      over: nameOfWork(work),
      number: record.sculpture.body.number,
      state: work.state,
      scale: latest?.score.scale,
      body,
      own: latest
        ? [
            {
              part: 'purpose',
              label: words.purpose,
              hint: words.purposeHint(drafted),
              text: own('purpose'),
              longest: 600,
            },
            { part: 'light', label: words.light, hint: words.lightHint, text: own('light'), longest: 300 },
            { part: 'summary', label: words.summary, hint: words.summaryHint, text: own('summary'), longest: 1200 },
          ]
        : [],
      lacks: latest
        ? [
            !(own('light') || lightOf(photos)) && words.lacks.light,
            surveyor === '' && words.lacks.surveyor,
            photos.length === 0 && words.lacks.photos,
            latest.classes.sculpture.set === undefined && words.lacks.set,
            latest.round.body.ended === undefined && words.lacks.open,
          ].filter((line) => typeof line === 'string')
        : [words.noRound],
    };
  },
};
