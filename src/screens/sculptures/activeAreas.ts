import type { SculptureScore } from '../../engine/condition';
import type { Figure } from '../../engine/record';
import type { ActiveArea } from '../../engine/trade';

const inOrder: readonly ActiveArea[] = ['green', 'bare', 'scale'];

/** The active areas that are there at all, m2. */
export const activeAreas = (score: SculptureScore): readonly (readonly [ActiveArea, Figure])[] =>
  inOrder.map((area) => [area, score.active[area]] as const).filter(([, figure]) => figure.value > 0);
