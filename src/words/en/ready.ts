import { bytes, date } from '../format';
import { spoken } from '../tongue';

/** What a look found, by its parameters. */
type Found = Readonly<Record<string, string | number>>;

/** Words of the check before a day in the field. */
export const ready = spoken('ready', 'ready', {
  title: 'Ready for the field',
  lead: 'What a day outdoors rests on, looked at before you go. Nothing is changed by it.',
  back: 'Back to the sculptures',
  link: 'Ready for the field?',
  do: 'Check this tablet',
  again: 'Check once more',
  what: 'It takes some seconds. The browser may ask whether the camera may be used: say yes, so that it does not ask on the ladder.',
  underWay: (done: number, all: number) => `Looking: ${done} of ${all}`,
  trial: (kept: number, of: number) => `Writing on trial: ${bytes(kept)} of ${bytes(of)}`,
  result: (ok: number, look: number, unknown: number) =>
    [
      ...(look === 0 ? ['Nothing to look at'] : [look === 1 ? '1 thing to look at' : `${look} things to look at`]),
      `${ok} in order`,
      ...(unknown > 0 ? [`${unknown} that the browser does not tell`] : []),
    ].join(', '),
  list: 'What was found',
  state: { ok: 'In order', look: 'Look at this', unknown: 'Cannot be known' },
  about: {
    offline: 'Without a network',
    installed: 'On the Home Screen',
    room: 'Room for photos',
    promise: 'Kept by the browser',
    elsewhere: 'A second copy',
    camera: 'Camera',
    clock: 'Clock',
    awake: 'Screen stays on',
    battery: 'Battery',
    person: 'Who is at work',
    round: 'Round under way',
  },
  found: {
    'offline: kept': (p: Found) => `All ${p.files} files of the app lie on this tablet. It opens without a network.`,
    'offline: some missing': (p: Found) =>
      `${p.kept} of ${p.all} files lie here. Load the page once more with a network, then check again.`,
    'offline: no worker': (_: Found) =>
      'The app is not kept here yet. With a network, load the page once more, wait a minute and check again.',
    'offline: not secure': (_: Found) =>
      'This address is not secure (no https), so no browser keeps the app. Open it at a secure address.',
    'offline: silent': (_: Found) =>
      'The browser did not answer. Switch the network off and load the page once: if it opens, it will open outdoors.',
    'installed: yes': (_: Found) => 'Opened from the Home Screen.',
    'installed: in a tab': (_: Found) =>
      'Opened in a browser tab. On a tablet, put it on the Home Screen: some browsers clear a tab’s data after a week unused.',
    'room: enough': (p: Found) =>
      `${bytes(Number(p.trial))} were written on trial and taken away again: room for ${p.photos} photos at least. The record takes ${bytes(Number(p.bytes))} by our own count.`,
    'room: full': (p: Found) =>
      `The tablet took only ${bytes(Number(p.kept))} on trial. Carry a bag out and let earlier photos go, or free space on the tablet. The record takes ${bytes(Number(p.bytes))}.`,
    'room: not tried': (p: Found) =>
      `The trial was refused (${p.said}). The record takes ${bytes(Number(p.bytes))}. See how much the tablet’s own settings call free.`,
    'promise: yes': (_: Found) => 'The browser has promised not to clear it when space is short.',
    'promise: no': (_: Found) => 'The browser may clear it when space is short. Ask it to keep it.',
    'promise: not told': (_: Found) => 'This browser does not say. Carry the survey out after each day.',
    'elsewhere: nothing here': (_: Found) => 'Nothing is entered here yet, so there is nothing to lose.',
    'elsewhere: never': (_: Found) => 'Everything is on this tablet only. Carry a bag out before you go.',
    'elsewhere: behind': (p: Found) =>
      `${p.rounds === 1 ? '1 round is' : `${p.rounds} rounds are`} on this tablet only; the last copy is of ${date(String(p.day))}. Carry a bag out before you go.`,
    'elsewhere: all': (p: Found) => `Every round ended here was carried out; last on ${date(String(p.day))}.`,
    'camera: opens': (_: Found) => 'It opens on the page.',
    'camera: not allowed': (_: Found) =>
      'The page may not use it. “Take a photo” still opens the tablet’s own camera; for the viewfinder, allow it in the settings of the browser.',
    'camera: none': (_: Found) => 'This device has none that the browser knows. Take another tablet, or photos apart.',
    'camera: not on the page': (_: Found) =>
      'This browser shows none on the page. Touch “Take a photo” once to see that the tablet’s own camera opens.',
    'camera: busy': (p: Found) =>
      `It did not open (${p.said}). Close what else uses it, or start the tablet anew, and check again.`,
    'clock: as it says': (p: Found) => `It says ${date(String(p.day))}, ${p.time}. Hold it against a watch.`,
    'clock: out of step': (p: Found) =>
      `It says ${date(String(p.today))}, and the last entry here is of ${date(String(p.day))}. Set the tablet’s clock.`,
    'awake: yes': (_: Found) => 'It is kept from going dark on the screens of the round.',
    'awake: refused': (_: Found) =>
      'The browser refused, as it does when the battery is low. Charge it, or set the tablet to stay on for long.',
    'awake: cannot': (_: Found) =>
      'This browser cannot keep it on. Set the tablet’s own screen time as long as it goes.',
    'battery: enough': (p: Found) => `Charged to ${p.percent} %.`,
    'battery: filling': (p: Found) => `${p.percent} %, and charging. Leave it on the cable until you go.`,
    'battery: low': (p: Found) => `${p.percent} %. Charge it, or take a power bank: the cold takes some of it.`,
    'battery: not told': (_: Found) => 'This browser does not say. Look at the tablet’s own mark; 70 % is a day.',
    'person: set': (p: Found) => `${p.role}. Each record is marked with it.`,
    'person: nobody set': (_: Found) => 'Nobody. Say who it is: the round is marked with it.',
    'person: nobody named': (_: Found) => 'Nobody is named on this tablet. Add who surveys, by role.',
    'round: none open': (_: Found) => 'None is open.',
    'round: open': (p: Found) => `${p.title}, ${date(String(p.day))}. It goes on where it stopped.`,
    'round: of another': (p: Found) =>
      `${p.title}, ${date(String(p.day))}, was begun by ${p.role}, who is not the one at work now. Change who is at work, or start a round of your own.`,
  },
  act: {
    promise: 'Ask the browser to keep it',
    room: 'Make room',
    carry: 'Carry it out',
    person: 'Say who is at work',
    round: 'To the first screen',
  },
  asked: { yes: 'The browser promises to keep it.', no: 'The browser does not promise it.' },
  hold: 'How you hold and see it',
  holdWhat: (theme: string, hand: string, gloves: boolean, wet: boolean) =>
    [
      theme,
      `touched with the ${hand} hand`,
      gloves ? 'large buttons for gloves' : 'buttons for bare hands',
      ...(wet ? ['wet glass'] : []),
    ].join(', '),
  holdHand: { left: 'left', right: 'right' },
  holdTo: 'Change it in Settings',
  cold: 'Below freezing a tablet may go off at 30 % and come back warm; in full sun it dims. Keep it under the coat, and in the shade. Every touch is kept as it is made, and the app opens where it stopped.',
} as const);
