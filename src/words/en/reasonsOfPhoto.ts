import type { PhotoReason } from '../../engine/photo';
import { spoken } from '../tongue';
import type { Sentences } from './sentence';

const lights: Readonly<Record<string, string>> = {
  'open shade': 'open shade',
  overcast: 'overcast',
  sun: 'sun',
  artificial: 'a lamp or flash',
};
const lightOf = (light: string): string => lights[light] ?? light;
const unsaid: Readonly<Record<string, string>> = {
  light: 'The light was not said',
  wet: 'Whether the surface was wet was not said',
  'light, wet': 'Neither the light nor whether the surface was wet was said',
};

/** Why a figure of a photo is as it is, or why there is none. */
export const reasonsOfPhoto = spoken('reasonsOfPhoto', 'reasonsOfPhoto', {
  'coverage: share of this photo': () => 'This is the share of what this photo shows, not of the whole zone.',
  'coverage: working not kept': () =>
    'How this was measured was not kept in a form this version reads, so its range cannot be worked out again.',
  'coverage: zone too small on the photo': (s) =>
    `The zone takes up ${s.number('pixels')} pixels of this photo; it should be ${s.number('least')} or more. Take a photo from closer, or one of the zone alone.`,
  'coverage: traced': (s) =>
    s.text('patches') === '0'
      ? 'No patch was traced: nothing of the finding was seen on this photo.'
      : `${s.times('patches', 'patch', 'patches')} traced. Corners a little off move the share by ${s.percent('points')}; the range also holds how differently one edge is traced twice.`,
  'coverage: patch crosses itself': (s) =>
    `The line of ${s.times('patches', 'patch crosses itself', 'patches crosses itself')}: what it takes in may not be what you meant. Look at its corners.`,
  'coverage: dots counted': (s) => `${s.number('hits')} of ${s.number('judged')} dots lie on the finding.`,
  'coverage: glare skipped': (s) =>
    `${s.times('glare', 'dot lies', 'dots lie')} in glare and is left out, of ${s.number('laid')}: the share is that of what could be seen.`,
  'coverage: a wrong dot is not in the range': () =>
    'The range is that of where the dots happened to fall. Dots judged wrongly come on top: one in twenty moves a small share by up to 5 points.',
  'coverage: dots left open': (s) => `${s.number('open')} of ${s.number('laid')} dots are not judged yet.`,
  'coverage: dots not judged yet': (s) =>
    `${s.number('open')} of ${s.number('laid')} dots are not judged yet. They lie row by row, so the first of them tell of a part of the zone only.`,
  'coverage: dots closer than a patch': (s) =>
    `The dots lie ${s.percent('spacing')} of the photo’s width apart and the largest patch is ${s.percent('patch')} wide: neighbours tell much the same. Tracing is the better way for patches this large.`,
  'coverage: dots closer than pixels tell': (s) =>
    `The dots lie ${s.number('pixels', 1)} pixels apart, and ${s.number('least')} are needed to tell one spot from the next. Lay fewer dots or take a photo from closer.`,
  'coverage: too much glare': (s) =>
    `${s.percent('share')} of the dots lie in glare. Take the photo again in open shade or under cloud.`,
  'coverage: too few dots judged': (s) =>
    `${s.times('judged', 'dot is judged', 'dots are judged')} so far; a share is told from ${s.number('fewest')}.`,
  'coverage: mask and check dots': (s) =>
    `The mask takes in ${s.percent('share')}. Of ${s.times('inside', 'check dot', 'check dots')} in it, ${s.number('wrong')} were not green; of ${s.number('outside')} outside it, ${s.number('missed')} were.`,
  'coverage: mask mostly wrong': (s) =>
    `${s.number('wrong')} of ${s.number('inside')} check dots in the mask were not green: it follows something else, a stain or leaves mirrored in the surface. Tap other spots, or count dots instead.`,
  'coverage: slips allowed for': (s) =>
    `The range allows for slips: up to ${s.percent('share')} of the dots judged the wrong way.`,
  'coverage: left out of the mask': (s) =>
    `${s.percent('share')} of the zone lies in glare or deep shade and was left out: the share is that of the rest.`,
  'coverage: too dark or too bright': (s) =>
    `${s.percent('share')} of the zone lies in deep shade or glare, too much to tell the share of the rest for the whole. Take the photo again in even light.`,
  'coverage: too few check dots judged': (s) =>
    `${s.times('judged', 'check dot is judged', 'check dots are judged')} so far. At least ${s.number('fewest')} are needed, ${s.number('each')} in the mask and ${s.number('each')} outside it.`,
  'coverage: too few spots tapped': (s) =>
    `${s.times('usable', 'spot', 'spots')} of ${s.text('sort') === 'green' ? 'green' : 'sound surface'} can be used; tap ${s.number('least')}, away from glare and deep shade.`,
  'coverage: green and sound too alike': (s) =>
    s.text('strays') === '0'
      ? 'On this photo the green and the sound surface are too alike in colour to be told apart. Count dots instead.'
      : `${s.times('strays', 'tapped spot looks', 'tapped spots look')} more like the other sort. Tap again, or count dots instead.`,
  'fit: too few pairs': (s) =>
    `${s.times('pairs', 'pair', 'pairs')} of ${s.number('needed')}. Each is one spot of the work, touched on both photos; one more than needed shows whether they agree.`,
  'fit: pairs in one place': () =>
    'The pairs lie too near one another to say how the rest of the photo lies. Touch spots far apart: top and bottom, left and right.',
  'fit: pairs on one line': (s) =>
    s.text('off') === '0'
      ? 'The pairs lie on one line, so the photo could turn about it. Touch a spot well beside that line.'
      : 'All pairs but one or two lie on one line. Touch another spot well beside that line.',
  'fit: mirrored': () =>
    'By these pairs one photo is the mirror of the other. Look whether left and right were exchanged in a pair, or whether a photo was turned over.',
  'fit: folded': () =>
    'By these pairs part of the photo would fold over on itself. Take away the pair that is wrong, or choose another way of laying.',
  'fit: residual': (s) =>
    `Each of the ${s.number('pairs')} pairs lies about ${s.number('percent', 2)} % of the photo’s width (${s.number('px', 1)} pixels) from where the others put it.`,
  'fit: blink only': (s) =>
    `That is over ${s.percent('most')}: the two can be looked at in turn, and no change map is drawn of them.`,
  'fit: not the same station': (s) =>
    `That is over ${s.percent('most')}: these two photos were not taken from the same place, or a pair is wrong. They are shown side by side only.`,
  'fit: one pair stands out': (s) =>
    `Pair ${s.number('pair')} does not agree with the others; without it they lie within ${s.number('percent', 2)} % of the width. Touch it again, or take it away.`,
  'fit: pairs take up little of the picture': (s) =>
    `The pairs take in ${s.percent('share')} of the picture. How far off it is outside them, they cannot say.`,
  'fit: homography only where flat': () =>
    'A slanted plane was fitted: it holds where the work is nearly flat, and nowhere else.',
  'photos: light not alike': (s) =>
    `The light was ${lightOf(s.text('earlier'))} then and ${lightOf(s.text('later'))} now: colours and shadows differ for that alone.`,
  'photos: wet not alike': (s) =>
    `The surface was ${s.text('earlier')} then and is ${s.text('later')} now: wet bronze looks darker and hides pale green.`,
  'photos: washed not alike': (s) =>
    `One was taken ${s.text('earlier')}, the other ${s.text('later')}: dirt may look like a change.`,
  'photos: light or wet not said': (s) =>
    `${unsaid[s.text('what')] ?? s.text('what')} for both photos, so nobody can tell whether they were taken alike.`,
  'photos: lens not alike': (s) =>
    `The lens was ${s.number('earlier')} mm then and is ${s.number('later')} mm now, as on a small-picture camera: near parts are drawn larger by the shorter one.`,
  'photos: one upright, one lengthwise': () =>
    'One photo is upright and one lengthwise: each shows parts that the other does not.',
  'area: scale too short': (s) =>
    `The two places of the scale lie ${s.percent('length')} of the photo’s width apart; they should be ${s.percent('least')} or more. Choose a longer length on the work.`,
  'area: no outline': () => 'The outline takes in no surface. Draw it first.',
} satisfies Sentences<PhotoReason>);
