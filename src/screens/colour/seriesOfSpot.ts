import {
  type AgainstAgreed,
  type AgainstEarlier,
  againstAgreed,
  againstLastYear,
  type MeanReading,
  meanReading,
  type Spot,
} from '../../engine/colour';
import type { Thing } from '../../engine/record';

/** One reading of a spot with what it is held against. */
export interface SpotRow {
  readonly reading: Thing<'reading'>;
  readonly mean: MeanReading;
  readonly agreed: AgainstAgreed | null;
  readonly before: AgainstEarlier | null;
}

/** The readings of a spot, the latest first. */
export const seriesOfSpot = (
  spot: Spot,
  agreed: readonly Thing<'agreedColour'>[],
  treatments: readonly Thing<'treatment'>[],
  zone: string | undefined,
): readonly SpotRow[] =>
  [...spot.readings].reverse().map((reading) => ({
    reading,
    mean: meanReading(reading.body.values),
    agreed: againstAgreed(reading, agreed, zone),
    before: againstLastYear(reading, spot.readings, treatments, zone),
  }));
