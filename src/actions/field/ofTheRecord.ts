import { isPersisted } from '../../device/persistence';
import { trialWrite } from '../../device/trialWrite';
import { clockWent } from '../clocks';
import type { Desk, Question } from '../desk';
import { fullUnderstood } from '../fullDevice';
import { sinceCarried } from '../keeping';
import { surveyors } from '../questions';
import { roundsUnderWay } from '../round';
import { whoIsAtWork } from '../whoIsAtWork';
import { type ReadyLine, readyLine } from './readiness';

/** Bytes of a photo of a tablet's camera at least; of our own making, for those kept here may be smaller copies. */
const usualPhoto = 4_000_000;

/** Read once and not watched further; by a desk nobody has asked yet, so that no earlier answer stands for the present one. */
const answerOf = <T>(desk: Desk, asking: (desk: Desk) => Question<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    const question = asking({ ...desk, store: Object.create(desk.store) as Desk['store'] });
    let stop = () => {};
    const look = () => {
      try {
        const answer = question.get();
        if (answer === undefined) return;
        stop();
        resolve(answer);
      } catch (error) {
        stop();
        reject(error);
      }
    };
    stop = question.subscribe(look);
    look();
  });

/** Room by what is held, as we count it ourselves, and by a trial that is written and taken away. */
export const roomReady = async (desk: Desk, bytes: number, heard?: (kept: number) => void): Promise<ReadyLine> => {
  const held = await desk.store.held();
  const trial = await trialWrite(bytes, heard);
  if (trial.whole) {
    fullUnderstood();
    const photo = Math.max(held.bytes / Math.max(held.photos, 1), usualPhoto);
    return readyLine('ok', 'room: enough', {
      trial: trial.kept,
      photos: Math.floor(trial.kept / photo),
      bytes: held.bytes,
    });
  }
  return /quota|space|disk/i.test(trial.said ?? '')
    ? readyLine('look', 'room: full', { kept: trial.kept, bytes: held.bytes })
    : readyLine('unknown', 'room: not tried', { said: trial.said ?? '', bytes: held.bytes });
};

export const promiseReady = async (): Promise<ReadyLine> => {
  const persisted = await isPersisted();
  if (persisted === 'yes') return readyLine('ok', 'promise: yes', {});
  return persisted === 'no' ? readyLine('look', 'promise: no', {}) : readyLine('unknown', 'promise: not told', {});
};

export const elsewhereReady = async (desk: Desk): Promise<ReadyLine> => {
  const { entries } = await desk.store.held();
  const { rounds, last } = await answerOf(desk, sinceCarried);
  if (entries === 0) return readyLine('ok', 'elsewhere: nothing here', {});
  if (!last) return readyLine('look', 'elsewhere: never', {});
  const day = last.at.slice(0, 10);
  return rounds > 0
    ? readyLine('look', 'elsewhere: behind', { rounds, day })
    : readyLine('ok', 'elsewhere: all', { day });
};

export const clockReady = async (desk: Desk): Promise<ReadyLine> => {
  const now = desk.now();
  const [went] = desk.invented ? [] : clockWent(await desk.store.lastDeed(), now);
  if (went) {
    const { day, today } = went.params;
    return readyLine('look', 'clock: out of step', { day: String(day ?? ''), today: String(today ?? '') });
  }
  return readyLine('ok', 'clock: as it says', { day: now.slice(0, 10), time: now.slice(11, 16) });
};

export const personReady = async (desk: Desk): Promise<ReadyLine> => {
  const [people, who] = await Promise.all([answerOf(desk, surveyors), whoIsAtWork(desk)]);
  if (people.length === 0) return readyLine('look', 'person: nobody named', {});
  const person = people.find(({ thing }) => thing === who);
  return person ? readyLine('ok', 'person: set', { role: person.role }) : readyLine('look', 'person: nobody set', {});
};

/** An open round is gone on with: by the one who began it, or its answers are of two eyes. */
export const roundReady = async (desk: Desk): Promise<ReadyLine> => {
  const [open, people, who] = await Promise.all([
    answerOf(desk, roundsUnderWay),
    answerOf(desk, surveyors),
    whoIsAtWork(desk),
  ]);
  const [first] = open;
  if (!first) return readyLine('ok', 'round: none open', {});
  const { title, round } = first;
  const day = round.body.date;
  const { surveyor } = round.body;
  const role = people.find(({ thing }) => thing === surveyor)?.role;
  return role !== undefined && surveyor !== who
    ? readyLine('look', 'round: of another', { title, day, role })
    : readyLine('ok', 'round: open', { title, day });
};
