import {
  type Classifier,
  classifierOf,
  inverseOf,
  isRefused,
  type Mark,
  mapped,
  type Outline,
  outlineThrough,
  type Refused,
  type Size,
} from '../../engine/photo';
import { deviceReason } from '../reasonCodes';
import type { ChangeAsked, ChangeShare, ChangeTold, KeptPhoto, Taps } from './asked';
import type { AtHand } from './atHand';
import { boxOf, scaled } from './box';
import { brushed } from './brushed';
import { cellsOf } from './cells';
import { changeCounts, changeKind, changeKinds } from './changeKinds';
import { type Breath, classified } from './classified';
import { hatched } from './hatched';
import { inPartOf, laid, surroundings } from './laid';
import { type Picture, pngOf } from './picture';
import { pixelNumbers } from './pixelNumbers';
import { workedSmaller } from './workedSmaller';

const marks: Readonly<Record<number, Mark>> = {
  [changeKind.newly]: 'newly',
  [changeKind.noLonger]: 'no longer',
  [changeKind.still]: 'still',
  [changeKind.leftOut]: 'left out',
};

/** What became green, stayed so or no longer is from one photo to a later one. One photo is unpacked after the other. */
export const changeBetween = async (
  hand: AtHand,
  asked: ChangeAsked,
  breath: Breath,
): Promise<ChangeTold | Refused> => {
  const { part, matrix, earlierTaps, laterTaps } = asked;
  const before = classifierOf(earlierTaps.green, earlierTaps.sound);
  const after = classifierOf(laterTaps.green, laterTaps.sound);
  if (isRefused(before) || isRefused(after))
    return {
      refused: [
        ...(isRefused(before) ? [deviceReason('taps of the earlier photo', {}), ...before.refused] : []),
        ...(isRefused(after) ? [deviceReason('taps of the later photo', {}), ...after.refused] : []),
      ],
    };
  const back = inverseOf(matrix);
  const around = surroundings(part, 2 * asked.edge);
  const told = async (photo: KeptPhoto, on: Outline, classifier: Classifier, taps: Taps, from: number) => {
    const picture = await hand.picture(photo);
    const classes = await classified(picture, comparedSize(picture, on), on, classifier, (done) =>
      breath(from + done / 2),
    );
    brushed(classes, taps.brush ?? []);
    return { classes, reasons: workedSmaller(picture) };
  };
  const throughBack = outlineThrough(around, (place) => mapped(back, place));
  const earlier = await told(asked.earlier, throughBack, before, earlierTaps, 0);
  const later = await told(asked.later, around, after, laterTaps, 0.5);
  const { size, box, of } = later.classes;
  const two = {
    ...{ width: box.width, height: box.height, inPart: inPartOf(part, later.classes) },
    ...{ earlier: laid(earlier.classes, later.classes, back), later: of },
  };
  const reach = asked.edge * size.width;
  const kinds = changeKinds(two, Math.round(reach));
  const counts = changeCounts(kinds);
  const far = changeCounts(changeKinds(two, Math.round(2 * reach)));
  const none = changeCounts(changeKinds(two, 0));
  const all = Math.max(1, of.length - counts.outside);
  const share = (kind: 'newly' | 'noLonger' | 'still'): ChangeShare => {
    const ends = [far[kind] / all, counts[kind] / all, none[kind] / all];
    return { value: counts[kind] / all, low: Math.min(...ends), high: Math.max(...ends) };
  };
  const cells = cellsOf({ size, box, of: kinds }, changeKind.outside);
  const drawn = hatched(cells, (what) => marks[what]);
  return {
    newly: share('newly'),
    noLonger: share('noLonger'),
    still: share('still'),
    neither: counts.neither / all,
    leftOut: counts.leftOut / all,
    overlay: await pngOf(cells.size, cells.box, drawn),
    reasons: [
      deviceReason('change within the fit', { share: asked.edge }),
      deviceReason('change not checked', {}),
      ...(counts.leftOut > 0 ? [deviceReason('change left out', { share: counts.leftOut / all })] : []),
      ...later.reasons,
    ],
  };
};

/** The picture as small as leaves the part the pixels it is compared at. */
const comparedSize = ({ size }: Picture, part: Outline): Size => {
  const { width, height } = boxOf(part, size);
  return scaled(size, Math.sqrt(pixelNumbers.compared / (width * height)));
};
