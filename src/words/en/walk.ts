import { spoken } from '../tongue';

const zones = (n: number): string => (n === 1 ? '1 zone' : `${n} zones`);

/** Words of the walk between rounds. */
export const walk = spoken('walk', 'walk', {
  title: 'Walk',
  lead: 'Past all works, from the ground: is the green back on what was waxed?',
  back: 'Sculptures',
  setting: (wet: string, how: string) => `Surface ${wet.toLowerCase()}, ${how.toLowerCase()}.`,
  settingChange: 'Change',
  settingDone: 'Done',
  watch: (left: number) =>
    left === 0 ? 'Nothing left on the list of this walk' : `${zones(left)} on the list of this walk`,
  progress: (looked: number, left: number) => `${zones(looked)} looked at, ${left} left`,
  dueWaits: 'The due days are being worked out. Until then the list goes by looks and coatings alone.',
  dueCame: 'The due days are worked out.',
  dueTake: 'Show them',
  allClear: (n: number) => (n === 1 ? 'The 1 left is clear' : `All ${n} left are clear`),
  allClearFor: (n: number, work: string) => `${n === 1 ? 'The 1 left is clear' : `All ${n} left are clear`}: ${work}`,
  allKept: (n: number) => `${zones(n)} clear. Kept.`,
  others: (n: number) => (n === 1 ? 'Show 1 zone not on the list' : `Show ${n} zones not on the list`),
  othersHide: 'Hide the zones not on the list',
  noneHere: 'Nothing to look at here this time.',
  none: 'There is no work to walk past yet.',
  noneWhat: 'Add a sculpture and its zones, and write down the first waxing: the walk watches what was waxed.',
  nothingDue: 'Nothing is due on this walk.',
  why: {
    today: '',
    'not sure': (day: string) => `Not sure last time, ${day}.`,
    due: (day: string) => `A look tells most about ${day}.`,
    'never looked at': (day: string) => `Coated ${day}; nobody has looked since.`,
    'not known': (day: string) => `Clear when last looked at, ${day}.`,
  },
  fromGround: 'From the ground: what you can see. Otherwise say “Not sure”.',
  seenToday: (result: string) => `Today: ${result}.`,
  lastSeen: (day: string, result: string) => `Last look ${day}: ${result}.`,
  never: 'No look yet.',
  done: 'This walk so far',
  ended: (n: number) => (n === 1 ? 'The green is back on 1 zone:' : `The green is back on ${n} zones:`),
  endedNone: 'No green seen so far.',
  next: (day: string) => `The next look is due ${day}.`,
  nextNone: 'No further look is due yet.',
  finish: 'End the walk',
  cautions:
    'Take care of yourself: stay on the ground, keep from the water’s edge and from nests, tell somebody where you are. Local rules go before this list.',
} as const);
