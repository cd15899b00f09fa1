import { spoken } from '../tongue';

/** Help on taking the survey out and bringing one in. */
export const helpCarry = spoken('helpCarry', 'helpCarry', {
  carry: {
    title: 'Carry',
    what: 'The one door in and out. Out: a bag to keep, a small file for another device, or a table. In: a file from another device, shown before anything is taken over.',
    first:
      'After a day of rounds: “Survey and photos”, prepare, save it somewhere else. Check what the list says is still in it before it leaves your hands.',
    from: 'Joining two surveys keeps every entry of both, in whatever order they meet.',
  },
  'carry-settle': {
    title: 'Two versions to settle',
    what: 'Where two people recorded the same thing without seeing each other. Both stand; every figure that rests on them says so.',
    first:
      'Go through the fields that differ and say which holds. If in doubt leave it, and look together at the work.',
    from: 'No clock decides. Until it is settled, the longer line of corrections leads, then the worse finding.',
  },
  'carry-bring': {
    title: 'Bring in what you have',
    what: 'Lists of treatments, old photos and earlier reports, taken into the record row by row.',
    first: 'Take the list of wax dates first: it makes holds at once. Save the spreadsheet as CSV and choose it.',
    from: 'Nothing is taken over before you have seen the row. Days stay as vague as they are written.',
  },
  'carry-in-step': {
    title: 'Keep in step',
    what: 'One shared folder through which several devices hold the same survey. Off until you switch it on.',
    first:
      'Ask whoever looks after the server for a name and a password, or choose a folder another program keeps alike on several devices. Try it with two of them at the desk.',
    from: 'Each device writes only files of its own and reads those of the others.',
  },
});
