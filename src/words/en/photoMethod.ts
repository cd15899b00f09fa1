import { spoken } from '../tongue';

/** Words of the method page on what is measured on photos and by instruments. */
export const photoMethod = spoken('photoMethod', 'photoMethod', {
  coverage: 'Coverage measured on a photo',
  coverageText: [
    'There are three ways, and each stands beside what the eye said in the round. None takes its place, and none is mended by another. All three tell the share of what this photo shows, not of the whole zone.',
    'Traced: the area inside the patches you draw, over the area of the zone’s outline. Patches that lie on each other count once, and only inside the zone. The range holds what a hand does that is a little off at each corner, and the error of judging where a patch ends.',
    'Dots: a grid over the zone, each dot moved a little by chance, so that it falls in with no pattern of the work. You say of each whether it lies on green. The share is green over judged; dots in glare are skipped. The range is that of a share of so many dots: Wilson’s, its ends pushed out where there are only one to three hits or misses.',
    'Pixels, checked: you touch three green spots and three sound ones. Each pixel goes to the sort it lies nearer to in a* and b*, lightness left out; glare and deep shade are left out too. What the pixels say is only a first word: you judge check dots in the mask and outside it, without being shown which is which, and the share comes from both: mask × green of the dots in it + rest × green of the dots outside. So the range sees what the pixels took for the wrong thing.',
    'Nothing is told where the zone is too small on the photo, where too much of it lies in glare or shade, where too few dots are judged, or where green and sound surface are too alike.',
    'Tracing suits few large patches, dots suit many small ones, pixels suit a photo in even light. Where two ways differ by more than their ranges, look at the work again.',
  ],
  dotsTell: 'What so many dots tell (95 %)',
  dotsHeads: { dots: 'Dots judged', none: 'None green' },
  dotsSeen: (share: string) => `${share} seen`,
  dotsUpTo: (share: string) => `up to ${share}`,
  fromTo: (low: string, high: string) => `${low} to ${high}`,

  fits: 'One photo laid on another',
  fitsText: (n: { readonly similarity: string; readonly affine: string; readonly homography: string }) => [
    `You touch the same spots on both photos: ${n.similarity} pairs where the photo is only turned and sized, ${n.affine} where it is stretched too, ${n.homography} where it is laid as a slanted plane, which suits near-flat parts only. Each is more than needed, so that something is left to check by.`,
    'Each pair is left out in turn, the rest lay the photo, and it is seen how far that pair comes to lie from its place. The root mean square of these is the residual, told in pixels and as a share of the photo’s width.',
    'What the residual allows is in the table: a change map, only looking at the two in turn, or neither.',
    'A sculpture is not flat. From another place its parts shift against each other, and no way of laying mends that: stand on the same spot.',
    'Photos of unlike light, wetness or washing can be laid on each other; that they are unlike is said beside them. A change map counts green as new or gone only where it moved further than the residual.',
  ],
  fitNumbers: 'Numbers of laying one photo on another',

  areas: 'Areas from outlines',
  areasText: (error: string) => [
    'The area an outline shows flat, by the two places on the photo whose distance was measured on the work, times how much larger the surface is than what shows: see the table.',
    `The range is ${error} to each side. A measure taken on the work itself is better.`,
  ],
  obliquity: 'Surface over what shows flat',
  obliquityNames: { flat: 'Flat, looked at squarely', curved: 'Curved', folded: 'Deep folds' },

  colour: 'Colour',
  colourText: [
    'A figure of a colour comes from an instrument put down on the surface, and from nothing else. Photos are looked at side by side.',
    'A reading is the mean of its placings. Two readings are told apart only where illuminant, observer, geometry, opening and wetness are the same, and where nothing was done in between that makes another surface. Where one does not fit, the one before it is taken, and that is said.',
    'The difference is CIEDE2000, all factors 1. Its range is as much to either side as an F of 3 and n − 1 degrees (of both readings together) allows on the spread of single placings, at 90 %: three figures may differ at once.',
    'An agreed colour holds as it was written down and has no error of its own. The one agreed last by the day of the reading is used, that of the zone before that of the whole work.',
    'In tests on drawn readings this calls a change where there is none in a tenth of cases or fewer.',
  ],
  colourNumbers: 'Numbers of colour',
  numbersOfCoverage: 'Numbers of coverage on photos',
  what: 'What',
  value: 'Value',
  source: 'Source',
} as const);
