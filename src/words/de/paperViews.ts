import type { paperViews as english } from '../en/paperViews';
import { list } from '../format';
import type { Same } from '../tongue';

export const paperViews: Same<typeof english> = {
  told: (side: string, letters: readonly string[]) => `Ansicht: ${side}. Eingezeichnete Zonen: ${list(letters)}.`,
  photo: (side: string) => `Foto der Ansicht: ${side}`,
  photoOf: (side: string, day: string) => (day === '' ? `Foto, ${side}` : `Foto, ${side}, ${day}`),
  drawn: (side: string) => `Zonen, ${side}. Buchstaben wie in den Tabellen.`,
  sameSpot: (station: string, day: string, state: string) =>
    `${day}, von Standpunkt ${station}${state === '' ? '' : ` (${state})`}`,
  wet: { dry: 'trocken', damp: 'feucht', wet: 'nass' },
  washed: { 'before wash': 'vor dem Waschen', 'after wash': 'nach dem Waschen' },
};
