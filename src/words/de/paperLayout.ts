import type { paperLayout as english } from '../en/paperLayout';
import type { Same } from '../tongue';

export const paperLayout: Same<typeof english> = {
  seen: 'Gesehen',
  thought: 'Vermutet, nicht gesehen',
  notLooked: 'Nicht angesehen',
  danger: 'Vorsicht',
  notHere: 'Das Foto liegt an anderem Ort',
  signedOn: 'Unterschrift und Datum',
  invented: 'ERFUNDEN',
  inventedWhole: 'Erfunden: Diese Sammlung, ihre Werke und ihre Personen gibt es nicht.',
  draftWhole: 'Entwurf',
  status: { draft: 'Entwurf', final: 'endgültig' },
  state: (word: string) => `Stand ${word}`,
  scale: (word: string) => `Skala ${word}`,
  pageOf: { page: 'Seite ', of: ' von ' },
};
