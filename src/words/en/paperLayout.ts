import { spoken } from '../tongue';

/** What all papers share: boxes, foot, marks. */
export const paperLayout = spoken('paperLayout', 'paperLayout', {
  seen: 'Seen',
  thought: 'Thought, not seen',
  notLooked: 'Not looked at',
  danger: 'Take care',
  notHere: 'Photo kept elsewhere',
  signedOn: 'Signature and date',
  invented: 'INVENTED',
  inventedWhole: 'Invented: this collection, its works and its people do not exist.',
  draftWhole: 'Draft',
  status: { draft: 'draft', final: 'final' },
  state: (word: string) => `record ${word}`,
  scale: (word: string) => `scale ${word}`,
  pageOf: { page: 'Page ', of: ' of ' },
});
