import { levelOf } from '../../engine/condition';
import type { WorkOnPaper } from '../../engine/reckoning';
import type { Thing } from '../../engine/record';
import { date, midSentence, share, thingNames, w } from '../../words';
import { close, figure, h, type PaperPiece, type PaperSort, pictures, say, section, signatures } from '../layout';
import { nameOfWork, ownText, thingsOfAll, workOf, worksToChoose } from '../reading';
import { factsOfWork, photosOfRound, roundTypeOf, surfaceOf } from './conditionFacts';
import { className, ranged } from './conditionFigures';
import { foundBefore } from './foundBefore';
import { hotWorkAndContractors, watchUnsaid } from './hotWorkAndContractors';
import { incidentsOf } from './incidentsOf';
import { insertValues, valuesLacking } from './insertValues';
import { type LatestOnPaper, latestOnPaper } from './latestOnPaper';
import { notLookedFirst } from './notLookedFirst';
import { openDangers } from './openDangers';
import { captionOf } from './photosOnPaper';
import { riskAsRecorded, riskLines } from './riskAsRecorded';
import { upkeep } from './upkeep';

const words = w.paperInsurer;
const id = 'insurer-note';
/** Most photos: one row. */
const most = 3;

/** What was there before, proof of upkeep, hot work, values and risk as recorded. It guesses at no cause. */
export const insurerNote: PaperSort = {
  id,
  about: 'work',
  pages: [1, 2],
  title: words.title,
  reader: words.reader,
  speaksOf: ['money'],
  choices: worksToChoose,
  make: (source, about) => {
    const work = workOf(source, about);
    if (!work) return undefined;
    const { record } = work;
    const latest = latestOnPaper(work);
    const nameOf = thingNames(record, []);
    const own = (part: string) => ownText(source, id, about, part);
    const lacking = valuesLacking(work).length;
    const photos = latest ? photosToShow(work, latest) : [];
    return {
      title: words.title,
      over: nameOfWork(work),
      number: record.sculpture.body.number,
      state: work.state,
      scale: latest?.score.scale,
      body: [
        close(
          own('why') !== '' && say(own('why'), 'lead'),
          notLookedFirst(latest),
          openDangers(record, latest?.classes, nameOf),
          theWorkWithPhoto(work, latest, photos[0]),
          latest && condition(work, latest, photos.slice(1)),
          incidentsOf(work, thingsOfAll(source, 'incident')),
          upkeep(record),
          hotWorkAndContractors(work),
          insertValues(work),
          riskAsRecorded(work, own('risk')),
          signatures([{ role: words.signs }]),
        ),
      ],
      own: [
        { part: 'why', label: words.why, hint: words.whyHint, text: own('why'), longest: 600 },
        { part: 'risk', label: words.own, hint: words.ownHint, text: own('risk'), longest: 2000 },
      ],
      lacks: [
        lacking > 0 && words.lacks.values(lacking),
        riskLines(work).length === 0 && own('risk') === '' && words.lacks.risk,
        latest !== undefined && photos.length === 0 && words.lacks.photos,
        watchUnsaid(work) && words.lacks.watch,
      ].filter((line) => typeof line === 'string'),
    };
  },
};

/** Views first, then squares. */
const photosToShow = (work: WorkOnPaper, { round }: LatestOnPaper): readonly Thing<'photo'>[] =>
  [...photosOfRound(work, round.thing)]
    .sort((a, b) => Number(b.body.role === 'station') - Number(a.body.role === 'station'))
    .slice(0, most);

const asPictures = (work: WorkOnPaper, photos: readonly Thing<'photo'>[]): PaperPiece =>
  pictures(
    photos.map((photo) => ({ sha256: photo.body.sha256, caption: captionOf(work, photo) })),
    'strip',
  );

const theWorkWithPhoto = (
  work: WorkOnPaper,
  latest: LatestOnPaper | undefined,
  photo: Thing<'photo'> | undefined,
): PaperPiece =>
  section(
    w.paperCondition.what,
    photo
      ? h('div', { class: 'beside' }, factsOfWork(work, latest, 'short'), asPictures(work, [photo]))
      : factsOfWork(work, latest, 'short'),
  );

const condition = (work: WorkOnPaper, latest: LatestOnPaper, photos: readonly Thing<'photo'>[]): PaperPiece => {
  const { score, classes, round } = latest;
  const { value, low, high } = score;
  const { sculpture } = classes;
  const name = className('condition', levelOf(sculpture, 'condition'));
  const setBy = sculpture.set?.condition === undefined ? undefined : sculpture.set.setBy;
  return section(
    words.condition,
    say(words.conditionHow(date(round.body.date), midSentence(roundTypeOf(round)), surfaceOf(round))),
    h(
      'div',
      { class: 'figures' },
      figure(
        w.paperCondition.index,
        value === null || low === null || high === null ? w.paperCondition.indexNone : ranged({ value, low, high }),
        words.indexHow(share(score.seenShare)),
      ),
      figure(words.class, setBy ? words.bySetter(name, setBy) : name, words.classHow),
    ),
    asPictures(work, photos),
    foundBefore(latest),
  );
};
