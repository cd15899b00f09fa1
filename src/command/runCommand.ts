import '../words/pastStart';
import { adviceOn, type NoSurvey, readSurvey, type Survey, unite, writeSurvey } from '../engine/exchange';
import { sayReason } from '../words';
import { callOf } from './callOf';
import { livesByGroup, livesIn } from './livesInFile';
import { scoredSurvey } from './scoredSurvey';

export interface Ran {
  /** 0 done; 1 the file is faulty or could not be read; 2 the call itself was wrong. */
  readonly code: 0 | 1 | 2;
  readonly out: string | Uint8Array;
  readonly err: string;
}

const failed = (code: 1 | 2, err: string): Ran => ({ code, out: '', err });

/** One call of the command. `read` gives the bytes of a file, or throws. Never throws itself. */
export const runCommand = (words: readonly string[], read: (file: string) => Uint8Array): Ran => {
  const call = callOf(words);
  if (!call.ok) return failed(2, call.problem);
  const { verb, files, today } = call;
  const surveys: Survey[] = [];
  for (const file of files) {
    let bytes: Uint8Array;
    try {
      bytes = read(file);
    } catch (error) {
      const said = error instanceof Error ? error.message : String(error);
      return failed(1, `${file} could not be read: ${said}. Check the name, and that you may read it.`);
    }
    if (verb === 'life') return lives(bytes, file);
    const survey = readSurvey(bytes);
    if (!survey.ok)
      return verb === 'check'
        ? { code: 1, out: `${whatIsWrong(survey)}\n`, err: '' }
        : failed(1, `${file}: ${whatIsWrong(survey)}`);
    surveys.push(survey);
  }
  const [first, second] = surveys as [Survey, Survey | undefined];
  if (second) return joined(first, second, files);
  if (verb === 'check')
    return { code: 0, out: `${['ok', ...first.notes.map((note) => sayReason(note))].join('\n')}\n`, err: '' };
  return { code: 0, out: `${JSON.stringify(scoredSurvey(first, today), null, 2)}\n`, err: '' };
};

const lives = (bytes: Uint8Array, file: string): Ran => {
  const read = livesIn(bytes);
  if (!read.ok) return failed(1, `${file}: ${read.problem}`);
  const out = `${JSON.stringify(livesByGroup(read.rows), null, 2)}\n`;
  return { code: 0, out, err: read.notes.join('\n') };
};

const whatIsWrong = ({ problems }: NoSurvey): string =>
  problems
    .flatMap((problem) => {
      const todo = (adviceOn as Readonly<Record<string, string>>)[problem.code];
      return [sayReason(problem), ...(todo ? [`  ${sayReason({ code: todo, params: {} })}`] : [])];
    })
    .join('\n');

const joined = (a: Survey, b: Survey, [nameA, nameB]: readonly string[]): Ran => {
  if (a.collection !== b.collection) {
    return failed(
      1,
      `${nameA} and ${nameB} are of two collections and are not united here. Carry the one in on a tablet that holds the other: there you see what would change.`,
    );
  }
  const united = unite(a.entries, b.entries);
  if (!united.ok) return failed(1, united.problems.map((problem) => sayReason(problem)).join('\n'));
  return { code: 0, out: writeSurvey(a.collection, united.entries), err: '' };
};
