import type { BringReason } from '../../engine/bring';
import { spoken } from '../tongue';
import type { Sentences } from './sentence';

/** Why a list or a file brought in is not taken as it stands. */
export const reasonsOfBring = spoken('reasonsOfBring', 'reasonsOfBring', {
  'bring: empty list': () => 'There is no row in this list.',
  'bring: list too long': (s) =>
    `This list has ${s.number('rows')} rows, more than the ${s.number('most')} that are taken over at once. Bring it in parts.`,
  'bring: quote not closed': (s) =>
    `A quotation mark that opens in line ${s.number('line')} is never closed, so the rows after it cannot be told apart. Close it in the list and choose the list again.`,
  'bring: work missing': () => 'No work is named. Choose the column that names it, or one work for all rows.',
  'bring: work not known': (s) =>
    `No work here has the number or title “${s.text('text')}”. Choose the work it means, or leave the row out.`,
  'bring: work unclear': (s) => `More than one work here is called “${s.text('text')}”. Choose the one it means.`,
  'bring: zone not known': (s) =>
    `This work has no zone of the letter or name “${s.text('text')}”. Take the column for the note, or mend the list.`,
  'bring: day missing': () => 'No date stands there.',
  'bring: day order unclear': (s) =>
    `“${s.text('text')}” may be two different days. Choose whether the day or the month comes first.`,
  'bring: day not a day': (s) =>
    `“${s.text('text')}” is no day of the calendar. Is the order of day and month right, or is it a slip?`,
  'bring: day a bare number': (s) =>
    `“${s.text('text')}” is how a spreadsheet counts days. Format that column as dates there and save the list again.`,
  'bring: day ahead': (s) => `“${s.text('text')}” is still to come. Only what was done is taken over.`,
  'bring: no year in it': (s) => `“${s.text('text')}” names no year: it is kept as written, and no figure can use it.`,
  'bring: short year': (s) => `“${s.text('text')}” is read as a day of ${s.text('year')}.`,
  'bring: sort missing': () => 'It does not say what was done. Choose one sort of treatment for such rows.',
  'bring: sort not chosen': (s) => `Choose what “${s.text('text')}” is.`,
  'bring: coats not read': (s) => `“${s.text('text')}” is not a number of coats; it goes into the note.`,
  'bring: text too long': (s) =>
    `The text for ${s.text('column')} is longer than ${s.number('most')} characters. Shorten it in the list.`,
  'bring: row twice': (s) => `Says the same as line ${s.number('line')} and is taken once.`,
} satisfies Sentences<BringReason>);
