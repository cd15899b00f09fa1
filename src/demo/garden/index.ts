import { fluke } from './fluke';
import { geese } from './geese';
import { rope } from './rope';
import { stair } from './stair';
import { supper } from './supper';
import { waiting } from './waiting';
import type { DemoWork } from './work';

export type * from './work';

/** The invented garden: six bronzes, 39 zones, six years. Nothing in it is real. */
export const garden: readonly DemoWork[] = [waiting, stair, supper, geese, rope, fluke];

/** Days of the yearly round, in May before washing, as a person confirmed them. */
export const roundDays: readonly string[] = [
  '2021-05-11',
  '2022-05-12',
  '2023-05-16',
  '2024-05-14',
  '2025-05-13',
  '2026-05-12',
];
