import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const photoReasons = {
  'coverage: share of this photo': [],
  'coverage: working not kept': [],
  'coverage: zone too small on the photo': ['pixels', 'least'],
  'coverage: traced': ['patches', 'points'],
  'coverage: patch crosses itself': ['patches'],
  'coverage: dots counted': ['hits', 'judged'],
  'coverage: glare skipped': ['glare', 'laid'],
  'coverage: a wrong dot is not in the range': [],
  'coverage: dots left open': ['open', 'laid'],
  'coverage: dots not judged yet': ['open', 'laid'],
  'coverage: dots closer than a patch': ['spacing', 'patch'],
  'coverage: dots closer than pixels tell': ['pixels', 'least'],
  'coverage: too much glare': ['share'],
  'coverage: too few dots judged': ['judged', 'fewest'],
  'coverage: mask and check dots': ['share', 'missed', 'outside', 'wrong', 'inside'],
  'coverage: mask mostly wrong': ['wrong', 'inside'],
  'coverage: slips allowed for': ['share'],
  'coverage: left out of the mask': ['share'],
  'coverage: too dark or too bright': ['share'],
  'coverage: too few check dots judged': ['judged', 'fewest', 'each'],
  'coverage: too few spots tapped': ['sort', 'usable', 'least'],
  'coverage: green and sound too alike': ['apart', 'least', 'strays'],
  'fit: too few pairs': ['pairs', 'needed'],
  'fit: pairs in one place': [],
  'fit: pairs on one line': ['off'],
  'fit: mirrored': [],
  'fit: folded': [],
  'fit: residual': ['share', 'px', 'pairs'],
  'fit: blink only': ['most'],
  'fit: not the same station': ['most'],
  'fit: one pair stands out': ['pair', 'without'],
  'fit: pairs take up little of the picture': ['share'],
  'fit: homography only where flat': [],
  'area: scale too short': ['length', 'least'],
  'area: no outline': [],
} as const satisfies Record<string, readonly string[]>;

export type PhotoReason = keyof typeof photoReasons;

export const because = (code: PhotoReason, params: Reason['params'] = {}): Reason => ({ code, params });
