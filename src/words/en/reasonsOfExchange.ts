import { spoken } from '../tongue';
import type { Params } from './sentence';

/** "in entry 12 (finding), at entries[11].body.coverage". */
const place = (s: Params): string =>
  Number(s.text('entry')) > 0
    ? `in entry ${s.text('entry')} (${s.text('kind')}), at ${s.text('where')}`
    : `at ${s.text('where')}`;

/** What is wrong in a survey file and where. What to do stands beside it: see adviceOn in engine/exchange. */
const problems = {
  'empty file': () => 'The file is empty.',
  'file too large': (s) => `The file has ${s.number('megabytes')} MB; up to ${s.number('most')} MB can be read.`,
  'a zip file': () => 'This is a packed (zip) file, not a survey file.',
  'not UTF-8': () => 'The file holds bytes that are no text: it was damaged on the way.',
  'file cut off': () => 'The file ends in the middle: it was cut off on the way.',
  'not JSON': () => 'The file cannot be read: its text is not in the form of a survey file, or was damaged.',
  'not a survey': () => 'This is not a survey file of Patina Round.',
  'version not readable': (s) => `The file does not say which version of the format it is in (“${s.text('found')}”).`,
  'newer format': (s) =>
    `The file was written by a newer version (format ${s.text('found')}); this one reads up to ${s.text('known')}.`,
  'check does not match': () =>
    'The check sum of the file does not match its content: it was damaged or changed after it was written.',
  'too many entries': (s) => `The file holds ${s.number('count')} entries; up to ${s.number('most')} can be read.`,
  'nested too deep': (s) =>
    `Something in the file is nested deeper than ${s.number('most')} levels, at ${s.text('where')}.`,
  'name not allowed': (s) => `The name “${s.text('found')}” may not be used, at ${s.text('where')}.`,
  'same name twice': (s) => `The name “${s.text('found')}” stands twice, at ${s.text('where')}.`,
  'text too long': (s) => `A text is longer than ${s.number('most')} characters, at ${s.text('where')}.`,
  'broken character': (s) => `A text holds a broken character, at ${s.text('where')}.`,
  'number not exact': (s) => `The number ${s.text('found')} cannot be kept exactly, at ${s.text('where')}.`,
  'number too large': (s) => `The number ${s.text('found')} is too large, at ${s.text('where')}.`,
  'value missing': (s) => `Something is missing ${place(s)}.`,
  'wrong sort of value': (s) => `“${s.text('found')}” is of the wrong sort, ${place(s)}.`,
  'number out of range': (s) =>
    `${s.text('found')} is not between ${s.text('least')} and ${s.text('most')}, ${place(s)}.`,
  'word not known': (s) => `The word “${s.text('found')}” is none of those that may stand there, ${place(s)}.`,
  'not a date': (s) => `“${s.text('found')}” is not a date, ${place(s)}.`,
  'not an id': (s) => `“${s.text('found')}” is not an entry number, ${place(s)}.`,
  'too long or too short': (s) => `Something is too long or too short ${place(s)}.`,
  'range ends out of order': (s) => `The low end is over the value or the high end is under it, ${place(s)}.`,
  'shares do not add up': (s) => `The shares do not come to 100 %, ${place(s)}.`,
  'name does not fit': (s) =>
    `The name “${s.text('found')}” does not fit what it speaks of (it should be “${s.text('fitting')}”), ${place(s)}.`,
  'within another': (s) =>
    `It says it belongs to “${s.text('found')}” where it should belong to “${s.text('fitting')}”, ${place(s)}.`,
  'refers to another kind': (s) =>
    `It points to “${s.text('found')}” where a ${s.text('fitting')} should stand, ${place(s)}.`,
  'refers to itself': (s) => `It points to itself, ${place(s)}.`,
  'one id, two contents': (s) => `Entry number ${s.text('id')} stands twice with two contents, ${place(s)}.`,
  'replaces itself': (s) => `An entry says it replaces itself, ${place(s)}.`,
  'replaces what is not in the file': (s) =>
    `An entry replaces “${s.text('found')}”, which is not in the file, ${place(s)}.`,
  'replaces across things': (s) => `An entry replaces one about something else (“${s.text('found')}”), ${place(s)}.`,
  'replaces in a circle': (s) => `Entries replace each other in a circle, ${place(s)}.`,
  'erasure changed': (s) =>
    `What was erased stays erased, yet the file says an erasure anew or takes it away, ${place(s)}.`,
  'more problems': (s) => `And ${s.times('count', 'more problem', 'more problems')} of this sort.`,
} satisfies Readonly<Record<string, (s: Params) => string>>;

/** What the person holding the file can do. */
const advice = {
  'get the file again': () => 'Carry it out again on the device it comes from, and open that file.',
  'update this app': () =>
    'Open this app once with a network, so that it brings itself up to date, then open the file again.',
  'choose another file': () => 'Choose the file whose name ends in .survey.json.',
  'carry fewer sculptures': () => 'Carry it out again with fewer sculptures in each file.',
  'ask who made the file': () => 'Ask the person who made the file how it was written or changed.',
} satisfies Readonly<Record<string, () => string>>;

/** What is worth saying of a file that is taken. */
const notes = {
  'written by a newer version': (s) =>
    `The file was written by a newer version (format ${s.text('found')}; this one knows ${s.text('known')}). What this one does not know is kept as it came.`,
  'kinds not known': (s) =>
    `${s.times('count', 'entry is', 'entries are')} of kinds this version does not know (${s.text('kinds')}): kept as they came, shown, and not scored.`,
  'kept at home': (s) =>
    `${s.times('count', 'reference points', 'references point')} to something that was left out and reads “kept at home”.`,
  'erased left out': (s) =>
    `${s.times('count', 'entry is', 'entries are')} left out, because the file itself says they were erased.`,
} satisfies Readonly<Record<string, (s: Params) => string>>;

export const reasonsOfExchange = spoken('reasonsOfExchange', 'reasonsOfExchange', { ...problems, ...advice, ...notes });
