import { spoken } from '../tongue';

/** Words of what was typed into a form and not kept. */
export const notKept = spoken('notKept', 'notKept', {
  back: (day: string, time: string) => `Not yet kept: what you typed on ${day} at ${time} is here again.`,
  discard: 'Discard it',
  discarded: 'Discarded. The form is as it was.',
  bringBack: 'Bring it back',
  notHeld: 'If you leave before you keep it, what you type here is lost.',
  title: 'Typed and not kept',
  lead: 'Forms left before they were kept. It lies on this device only and goes into no file.',
  discardedRow: (title: string) => `Discarded: ${title}.`,
  row: (day: string, time: string) => `${day}, ${time}`,
  open: (title: string) => `Go to “${title}”`,
  discardOf: (title: string) => `Discard it: ${title}`,
  again: 'Open the form there again and it is filled in as you left it.',
} as const);
