/** CIE 1976 L*a*b*: lightness 0 to 100, red (+) to green (-), yellow (+) to blue (-). Means nothing without the illuminant and observer it was worked out for. */
export interface Lab {
  readonly L: number;
  readonly a: number;
  readonly b: number;
}
