import { coveragePatch, patchHeight, patchWidth } from '../../engine/photo';
import { ladder } from '../../engine/trade';
import { w } from '../../words';
import { h, type PaperNode } from '../layout';

const words = w.paperCards;

/** A patch whose black covers just the share it stands for, to hold against a surface. */
export const patchOf = (share: number, label: string): PaperNode =>
  h(
    'svg',
    {
      class: 'card-patch',
      viewBox: `0 0 ${patchWidth} ${patchHeight}`,
      role: 'img',
      'aria-label': words.ladderTold(label),
    },
    h('rect', { width: patchWidth, height: patchHeight }),
    h('path', { 'fill-rule': 'evenodd', d: coveragePatch(share).path }),
  );

/** The whole ladder, large enough to be held against the surface. */
export const ladderOfPatches = (size: 'large'): PaperNode =>
  h(
    'div',
    { class: `card-ladder ${size}` },
    ...ladder
      .filter(({ value }) => value > 0)
      .map(({ label, value }) => h('div', {}, patchOf(value, label), h('p', {}, `${label} %`))),
  );
