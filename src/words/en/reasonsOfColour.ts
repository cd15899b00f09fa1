import type { ColourReason } from '../../engine/colour';
import { spoken } from '../tongue';
import type { Sentences } from './sentence';

/** Why a figure of a colour is as it is, or why there is none. */
export const reasonsOfColour = spoken('reasonsOfColour', 'reasonsOfColour', {
  'colour: other illuminant': (s) =>
    `One was worked out for illuminant ${s.text('one')} and one for ${s.text('other')}: their figures do not mean the same, so no difference is told. Ask whoever read it for the figures under the other illuminant too; most instruments can give both.`,
  'colour: other observer': (s) =>
    `One was worked out for the ${s.text('one')}° observer and one for the ${s.text('other')}°: no difference is told. Most instruments can give the same reading for both; ask for it.`,
  'colour: other geometry': (s) =>
    `One was read with geometry ${s.text('one')} and one with ${s.text('other')}. They see the shine of the surface differently, so no difference is told, and none can be worked out afterwards.`,
  'colour: other aperture': (s) =>
    `One was read through an opening of ${s.number('one', 1)} mm and one of ${s.number('other', 1)} mm: they took in other parts of an uneven surface, so no difference is told.`,
  'colour: other wetness': (s) =>
    `One was read on a ${s.text('one')} surface and one on a ${s.text('other')}: the difference would be that of the water, so none is told.`,
  'colour: another surface since': (s) =>
    `In between: ${s.treatment('treatment')}, ${s.day('date')}. The surface is another one since, so no change is told.`,
  'colour: aperture not known': () =>
    'The opening of the instrument is not written down for both. If it was not the same, the figure means less.',
  'colour: wetness not known': () =>
    'Whether the surface was dry is not written down for both. A wet surface is darker, whatever its colour.',
  'colour: other instrument': () =>
    'The two were read with different instruments. Even two of one make may differ by a few tenths of a unit.',
  'colour: done in between': (s) =>
    `In between: ${s.treatment('treatment')}, ${s.day('date')}. It may be what changed the colour.`,
  'colour: passed over': (s) =>
    `The reading of ${s.day('date')} lies in between and was made in another way, so it is passed over.`,
  'colour: few placings': (s) =>
    `${s.times('n', 'placing', 'placings')} of the instrument; ${s.number('fewest')} or more would say more.`,
  'colour: spread of placings': (s) =>
    `The range comes from how far the single placings lie from their mean: ${s.number('spread', 1)} units.`,
  'colour: spread assumed': (s) =>
    `There are too few placings to tell how far one lies from the next; ${s.number('spread', 1)} units are assumed.`,
  'colour: too far apart for the formula': (s) =>
    `Over ${s.number('limit')} units the figure says “far apart”, and no longer how far.`,
} satisfies Sentences<ColourReason>);
