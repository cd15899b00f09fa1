import { spoken } from '../tongue';

/** What is photographed of a work, as its own page names it. */
const some = (n: number, one: string, many: string) => (n === 1 ? `1 ${one}` : `${n} ${many}`);

export const photoLinks = spoken('photoLinks', 'photoLinks', {
  title: 'Photos and views',
  map: 'Zone map',
  mapWhat: 'The zones outlined on a view, coloured by what was found; outlines are drawn here too.',
  stations: 'Stations',
  stationsWhat: (stations: number, squares: number) =>
    stations + squares === 0
      ? 'None yet: the spots from which the same photo is taken every year.'
      : [
          stations > 0 && some(stations, 'station', 'stations'),
          squares > 0 && some(squares, 'sentinel square', 'sentinel squares'),
        ]
          .filter(Boolean)
          .join(', ')
          .concat('; cards to print.'),
  shots: 'Shot list',
  shotsWhat: 'What is to be photographed in this round, with a tick for what is there.',
  all: 'All photos',
  allWhat: (n: number) =>
    n === 0 ? 'None yet. Many can be brought in at once.' : `${some(n, 'photo', 'photos')} kept.`,
  compare: 'Compare two photos',
  compareWhat: 'One laid on the other: wipe, blink, and where the green is new.',
  colour: 'Colour',
  colourWhat: (n: number) =>
    n === 0
      ? 'Readings of an instrument, beside the agreed colour. None yet.'
      : `${some(n, 'reading', 'readings')} of an instrument.`,
} as const);
