import { spoken } from '../tongue';
import type { Params } from './sentence';

/** Why a device does not keep in step, and what it found in the folder. */
export const reasonsOfInStep = spoken('reasonsOfInStep', 'reasonsOfInStep', {
  'step: not switched on': () => 'Keeping in step is not switched on.',
  'step: under way already': () => 'A step is under way already. Wait for it to end.',
  'step: password needed': () =>
    'The password for the folder is kept only while the app is open. Type it again to go on keeping in step.',
  'step: folder to be let in': (s) =>
    `The browser asks again before the app may use the folder “${s.text('name')}”. Let it in.`,
  'step: invented': () => 'The invented collection is not kept in step with anything. Do it from your own collection.',
  'step: other collection': (s) =>
    `The folder holds another collection (“${s.text('theirs')}”) than this device (“${s.text('here')}”). Nothing was read or written. Use a folder of its own for each collection. If both should be one, begin on this device with the folder, before anything is entered.`,
  'step: several collections': () =>
    'The folder holds files of more than one collection. Nothing was read or written. Use an empty folder.',
  'step: no picker': () =>
    'This browser does not let an app use a folder. Use the folder on the server, or carry by files.',
  'step: left off': () => 'Left off. What went is kept; the next step goes on from there.',

  'step: file passed over': (s) =>
    `“${s.text('path')}” in the folder is half written or was altered, and was passed over. If it stays so, keep in step once more on the device that wrote it.`,
  'step: file waits': (s) =>
    `“${s.text('path')}” builds on entries that are not in the folder yet. It is taken in once they are.`,
  'step: file of another collection': (s) =>
    `“${s.text('path')}” in the folder belongs to another collection, and was passed over.`,
  'step: photo in the folder altered': (s) =>
    `“${s.text('path')}” in the folder is not the photo its name says, and was not taken. Delete that file; a device that has the photo writes it again.`,
  'step: photo here altered': (s) =>
    `The photo for “${s.text('path')}” is damaged on this device, and was not written. Look everything through under “Keeping it safe”.`,
  'step: copied tablet': () =>
    'Another device writes under this one’s name: one is a copy of the other. This device has a name of its own now. Nothing is lost.',

  'deed: kept in step': (s) => `kept in step, ${s.number('entries')} entries`,
} satisfies Readonly<Record<string, (s: Params) => string>>);
