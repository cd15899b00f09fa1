import { type Coverage, coverageSd, type EyeError, fromLogit, logit } from '../condition';
import { type Level, reachOf } from './wilson';

/** What an eye said of a zone, with the same surety as the figures measured on its photos, so that the two can stand side by side. */
export const saidByEye = (
  coverage: Coverage,
  error: EyeError = {},
  level: Level = 0.95,
): { readonly value: number; readonly low: number; readonly high: number } => {
  const { value } = coverage;
  const at = logit(value);
  const reach = reachOf(level) * coverageSd(coverage, error);
  return { value, low: Math.min(value, fromLogit(at - reach)), high: Math.max(value, fromLogit(at + reach)) };
};
