import { addDays } from '../engine/record';

export const usage = [
  'survey score FILE [--today YYYY-MM-DD]',
  '                     what the survey comes to on that day, as JSON; without a day, on the last the survey tells of',
  'survey check FILE    "ok", or what is wrong with the file',
  'survey join A B      the union of two files of one collection',
  'survey life FILE.csv how long things last: steps and curve per group, from columns lower,upper[,group]',
].join('\n');

const filesOf = { score: 1, check: 1, join: 2, life: 1 } as const;
export type Verb = keyof typeof filesOf;

export type Call =
  | { readonly ok: true; readonly verb: Verb; readonly files: readonly string[]; readonly today: string | undefined }
  | { readonly ok: false; readonly problem: string };

const wrong = (problem: string): Call => ({ ok: false, problem });

const isVerb = (word: string | undefined): word is Verb => word !== undefined && Object.hasOwn(filesOf, word);

/** A day of the calendar comes back from a day's count as it went in; the 31st of June does not. */
const isDay = (text: string): boolean => /^[1-9]\d{3}-\d{2}-\d{2}$/.test(text) && addDays(text, 0) === text;

/** What is asked for by the words after `survey`, or what is wrong with them. `--today` may stand anywhere. */
export const callOf = (words: readonly string[]): Call => {
  const plain: string[] = [];
  const days: string[] = [];
  for (let i = 0; i < words.length; i++) {
    const word = words[i] as string;
    if (word === '--today') days.push(words[++i] ?? '');
    else if (word.startsWith('--today=')) days.push(word.slice('--today='.length));
    else if (word.startsWith('--')) return wrong(`“${word}” is not known here.\n${usage}`);
    else plain.push(word);
  }
  const [verb, ...files] = plain;
  if (!isVerb(verb)) return wrong(`Say what to do:\n${usage}`);
  const wanted = filesOf[verb];
  if (files.length !== wanted)
    return wrong(
      `"${verb}" takes ${wanted === 1 ? 'one file' : 'two files'}, and ${files.length} were named.\n${usage}`,
    );
  const [today] = days;
  if (today === undefined) return { ok: true, verb, files, today };
  if (verb !== 'score') return wrong(`--today belongs to "score" alone: "${verb}" does not hang on the day.\n${usage}`);
  if (days.length > 1) return wrong(`--today stands there ${days.length} times. Give one day.\n${usage}`);
  if (!isDay(today))
    return wrong(`--today needs a day of the calendar such as 2026-10-15, and “${today}” is none.\n${usage}`);
  return { ok: true, verb, files, today };
};
