import type { photoLinks as english } from '../en/photoLinks';
import type { Same } from '../tongue';

const some = (n: number, one: string, many: string): string => (n === 1 ? `1 ${one}` : `${n} ${many}`);

export const photoLinks: Same<typeof english> = {
  title: 'Fotos und Ansichten',
  map: 'Zonenkarte',
  mapWhat: 'Die Zonen auf einer Ansicht umrissen, eingefärbt nach dem Befund; auch Umrisse werden hier gezeichnet.',
  stations: 'Standpunkte',
  stationsWhat: (stations: number, squares: number) =>
    stations + squares === 0
      ? 'Noch keine: die Stellen, von denen jedes Jahr dasselbe Foto aufgenommen wird.'
      : [
          stations > 0 && some(stations, 'Standpunkt', 'Standpunkte'),
          squares > 0 && some(squares, 'Beobachtungsquadrat', 'Beobachtungsquadrate'),
        ]
          .filter(Boolean)
          .join(', ')
          .concat('; Karten zum Drucken.'),
  shots: 'Aufnahmeliste',
  shotsWhat: 'Was in diesem Rundgang zu fotografieren ist, mit einem Haken an dem, was da ist.',
  all: 'Alle Fotos',
  allWhat: (n: number) =>
    n === 0
      ? 'Noch keine. Viele lassen sich auf einmal einlesen.'
      : n === 1
        ? '1 Foto gespeichert.'
        : `${n} Fotos gespeichert.`,
  compare: 'Zwei Fotos vergleichen',
  compareWhat: 'Eines auf das andere gelegt: wischen, wechseln, und wo das Grün neu ist.',
  colour: 'Farbe',
  colourWhat: (n: number) =>
    n === 0
      ? 'Messungen mit einem Gerät, neben dem vereinbarten Farbton. Noch keine.'
      : `${some(n, 'Messung', 'Messungen')} mit einem Gerät.`,
};
