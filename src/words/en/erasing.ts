import { spoken } from '../tongue';

/** Words of erasing: a person's name, or a photo, for good. */
export const erasing = spoken('erasing', 'erasing', {
  name: 'Erase a name',
  nameOpen: 'Erase a name …',
  nameOthers:
    'To erase the name of somebody who only stands in entries (who signed, gave, decided): add them here with their role and name, then erase the name. Every entry that holds it is found.',
  nameWhose: 'Whose name',
  nameGoes: (words: string) => `“${words}” goes from this survey for good.`,
  nameEarlier: (words: string) => `Earlier spellings go with it: ${words}.`,
  nameStays: (role: string) =>
    `All that was seen stays, under the role “${role}”. No name is taken for this role again.`,
  elsewhere: 'The same words stand elsewhere',
  elsewhereWhat: (role: string) => `Where ticked, “${role}” is put in their place, in earlier versions too.`,
  elsewhereNone: 'The same words stand nowhere else in the survey.',
  cannotGo: (n: number) =>
    n === 1
      ? '1 thing of a kind this version does not know holds the name and keeps it.'
      : `${n} things of kinds this version does not know hold the name and keep it.`,
  looking: 'Looking where the name stands …',
  nameReach:
    'Not reached: nicknames, initials and first names alone; what another device has written since you last met; names in pictures; what is printed.',

  photo: 'Erase this photo',
  photoOpen: 'Erase for good …',
  photoGoes: 'The picture and all that is said of it as a photo go from this survey for good.',
  photoStays: 'What was measured or drawn on it stays, without the picture. The same picture is not taken in again.',
  photoRemoveInstead: 'To take it only out of the lists, use “Remove from the record”: that can be undone.',

  reach:
    'Files, bags and other devices keep it until they meet this survey again: then it goes there too. Folders and mail you have sent it to are for you to clear.',
  disk: 'The browser may leave deleted bytes on the disk of this device until it tidies up.',
  reason: 'Reason',
  reasonHint: 'Stays in the survey when all else is gone: “asked for it”, “a passer-by”. Without the name.',
  reasonMissing: 'Write why: it is all that stays.',
  ask: 'Erase for good',
  askAgain: 'Really erase? It cannot be undone.',
  yes: 'Yes, erase it now',
  busy: 'Erasing …',
  done: 'Erased.',

  arriving: (entries: number, photos: number) =>
    `Erased elsewhere: ${entries === 1 ? '1 entry' : `${entries} entries`}${
      photos === 0 ? '' : photos === 1 ? ' and 1 picture' : ` and ${photos} pictures`
    } here will go for good`,
  arrivingWhat: 'This cannot be undone, and what came in cannot be taken back afterwards. Why it was erased:',
  arrivingTick: 'Let it go here too',
  arrivingRow: (n: number) =>
    n === 1 ? '1 entry here was erased elsewhere' : `${n} entries here were erased elsewhere`,
  refused: (n: number) =>
    n === 1
      ? '1 entry of the file was erased from this survey before and is not taken.'
      : `${n} entries of the file were erased from this survey before and are not taken.`,

  soFar: 'Erased from the survey',
  soFarRow: (what: string, day: string, reason: string) => `${what}, ${day}: ${reason}`,
  soFarOf: { name: 'A name', photo: 'A photo' },
} as const);
