import { spoken } from '../tongue';

/** Help on photos as evidence. */
export const helpPhotos = spoken('helpPhotos', 'helpPhotos', {
  'sculpture-stations': {
    title: 'Stations',
    what: 'The spots from which the same photo is taken every year, with direction, height, light and what to aim at.',
    first: 'Begin with one station that shows the worst side. Mark the spot on the ground and write how to find it.',
    from: 'You write it, or take it over from an earlier photo that came out well.',
  },
  'sculpture-shots': {
    title: 'Shot list',
    what: 'Which photos this round still lacks: each station, each square, and findings without one.',
    first: 'Start with the station in the light you have now. Each photo is ticked off as it is kept.',
    from: 'The stations and squares of this work, against the photos of the round that is shown.',
  },
  cards: {
    title: 'Cards to print',
    what: 'Cards that stand in the photo: they say which work, which spot, and how large it is.',
    first:
      'Print one at 100 % and hold a ruler to its bar: it must be 100 mm. Then print the rest on matt, stiff paper.',
    from: 'The grey steps show over- and underexposure. No home printer makes a neutral grey, so no colour is read off them.',
  },
  'sculpture-photos': {
    title: 'Photos',
    what: 'All photos of the work, and those that still wait to be told what they show.',
    first: 'Choose many at once after the day. Then sort: which station, zone or finding each belongs to.',
    from: 'The bytes are kept as the camera made them. Only the place is blanked, unless you want it.',
  },
  'sculpture-viewfinder': {
    title: 'Viewfinder',
    what: 'The camera with the earlier photo as a thin drawing over it, so that you stand where you stood.',
    first: 'Go to the mark, stand still, look behind you. Bring the edges onto each other, then take.',
    from: 'The drawing is made of the edges of the earlier photo of this station.',
  },
  'sculpture-compare': {
    title: 'Compare photos',
    what: 'The same spot in two years: side by side, wiped across, blinked, and as a map of where green came or went.',
    first:
      'Choose a station with several years and touch “Look at them”. Try “Blink” first: the eye catches what moves.',
    from: 'Pairs of points match the two photos. Under 1 % of the width left over, a change map is drawn; over 3 % it is not the same station.',
  },
  'sculpture-strip': {
    title: 'All years in a row',
    what: 'Every photo of one station from the first year to the last, laid on the latest.',
    first: 'Run along the row once as a whole. Then touch two neighbours to compare them.',
    from: 'Under each stands what fits badly: other light, wet, or too far off to lay on the rest.',
  },
  'measure-zone': {
    title: 'Measure on a photo',
    what: 'How much of a zone a finding covers on one photo: by outline, by dots, or by colours you point at.',
    first: 'Check that the part of the photo is right. Choose dots if in doubt: 49 touches, and the error is known.',
    from: 'A share of this photo, not of the zone. It stands beside what the eye said and never replaces it.',
  },
  'measure-sentinel': {
    title: 'Measure a square',
    what: 'What covers the 10 × 10 cm of a sentinel square on one photo.',
    first: 'Lay the frame on the four corners, then count dots. Same frame, same count, every year.',
    from: 'Dots, with Wilson’s interval.',
  },
});
