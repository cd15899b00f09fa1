import { spoken } from '../tongue';

/** Help on what is done outdoors and what is read from it. */
export const helpRound = spoken('helpRound', 'helpRound', {
  'sculpture-round-start': {
    title: 'Start a round',
    what: 'Says what kind of round this is, on which day, and in what state the surface is. Rounds are compared with their like, so these answers matter for years.',
    first:
      'Leave “Annual”. Say whether the surface is dry and whether it was washed, then start. Read the cautions once.',
    from: 'The day you confirm stands in the record, whatever the clock of the tablet says.',
  },
  round: {
    title: 'A round under way',
    what: 'All zones of the round in walking order, and what each has come to so far. You can leave and come back; every touch is kept.',
    first: 'Touch “Go on with zone …”. At the end of the list, end the round.',
    from: 'Four states are kept apart: something found, looked and nothing found, carried, not looked.',
  },
  'round-zone': {
    title: 'One zone of a round',
    what: 'What this zone shows this year. One touch answers it whole (As last year, Nothing found, Could not reach), or you go through its findings one by one.',
    first:
      'Look at the zone before the screen. Touch the kind you see, then where it sits, then the patch that looks like it. Photo before spray bottle. Then “Next”.',
    from: 'Each patch beside a step truly covers that share. A step stands for a span, and the sums carry the span as doubt. Undo takes back one touch at a time.',
  },
  'round-end': {
    title: 'End of the round',
    what: 'What is missing, how much was seen, the index, and what changed for sure. Up to three zones are asked again, so that your own error becomes known.',
    first:
      'Answer what is asked again without looking back. Go through what is missing, close the round, and carry it out the same day.',
    from: 'The index of this round’s own answers. Carried zones are left out of it.',
  },
  ready: {
    title: 'Ready for the field',
    what: 'What a day outdoors rests on, looked at before you leave: works without a network, room for photos, camera, clock, the last copy elsewhere, who is at work.',
    first:
      'The evening before, touch “Check this tablet” and say yes to the camera. Mend what stands on top of the list.',
    from: 'Asked of this browser, and tried: a file is written on trial and taken away again. What a browser does not tell is said to be unknown.',
  },
  'sculpture-look': {
    title: 'Look',
    what: 'Three minutes from the ground: the zones to watch, one touch each.',
    first:
      'Say whether the surface is dry, then touch “Clear” or “Green is back” for each zone. “Not sure” is a good answer.',
    from: 'Green is back: one bright spot over 1 cm², seen for sure. Each look ends or lengthens a hold.',
  },
  walk: {
    title: 'Walk',
    what: 'The same look past all works in one go, in the order of visits.',
    first:
      'Set the weather once at the top. Then one touch for each zone; a touch for “the rest is clear” where it is.',
    from: 'The list is made of zones that were coated and not seen since, and of those where a look would tell most now.',
  },
  'sculpture-then-and-now': {
    title: 'Then & now',
    what: 'One round against an earlier one: worse, better, or no change you can be sure of, for the work, each zone and each finding.',
    first:
      'Leave the two rounds as they are and read “In short”. Then try “Since the first round”: six years say more than one.',
    from: 'A difference over its error, taken on a scale on which small and large coverages weigh alike. The page tells how many false alarms to expect and the smallest change it could have noticed.',
  },
  'sculpture-over-time': {
    title: 'Over the years',
    what: 'Index, green and single findings as lines over all rounds, with what was done in between marked on the axis.',
    first: 'Read the sentence over each line before the line. Choose one zone to see its own.',
    from: 'Slope by Theil and Sen, its test by Mann and Kendall. A line breaks where the surface became another one, or where its cause was removed.',
  },
  'sculpture-agreement': {
    title: 'Two surveyors, one round',
    what: 'Where two people judged the same zones beside each other: how far they agree, and where to look together.',
    first: 'Go to the zones at the top of the list with both people and settle what you call it.',
    from: 'Cohen’s kappa for kinds, weighted kappa for severity, intraclass correlation for coverage, each with its interval.',
  },
  holds: {
    title: 'How long the wax holds',
    what: 'For each zone: what is on it, how long earlier coatings kept the green away, when to wax again, and when a look tells most.',
    first: 'Read the zones on top: there waxing does not hold. For the others note the day beside “Next look”.',
    from: 'A hold is a span and never a day, since nobody saw the green come. Curves after Turnbull and Weibull; with few ends the shape is borrowed and that is said.',
  },
  'sculpture-map': {
    title: 'Zone map',
    what: 'The zones on a picture of the work, shaded by index, class, urgency, change or hold.',
    first: 'Choose a side, then what to show. Touch a zone to open what was recorded there.',
    from: 'Pale is sound and dark is poor; a hatch goes with each shade, so that it reads in grey and for every eye. A zone not judged stays white.',
  },
  'sculpture-outline': {
    title: 'Draw the zones',
    what: 'Puts the outline of each zone on a picture of one side.',
    first:
      'Choose a zone in the list, then touch its corners on the picture, one after the other. Rough is good enough.',
    from: 'Outlines are for finding your way and for shares of a photo. The area of a zone stays the one you gave it.',
  },
  'sculpture-colour': {
    title: 'Colour',
    what: 'What an instrument read on marked spots, held against the agreed colour and against the reading before.',
    first:
      'When a conservator brings an instrument, ask for three placings on each spot and for how they were read. Write both down here.',
    from: 'CIEDE2000 between readings made in the same way. Never from a photo: a photo holds the weather too.',
  },
});
