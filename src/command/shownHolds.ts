import type { Advice, HoldCurve, Life, OpenFigure, ZoneHolds } from '../engine/hold';
import type { Say } from './said';

const openFigure = (figure: OpenFigure | null, said: Say) =>
  figure && { value: figure.value, low: figure.low, high: figure.high, reasons: said(figure.reasons) };

/** One work's holds, zone by zone, each with what is advised; `advice` null for zones that have ended. Months; days YYYY-MM-DD. */
export const shownHolds = (zones: readonly ZoneHolds[], advice: readonly Advice[], said: Say) => {
  const adviceFor = new Map(advice.map((one) => [one.zone, one]));
  return zones.map(({ zone, group, event, holds, noHolds, spans, shortening, onNow, reasons }) => ({
    zone,
    group,
    event,
    holds: holds.map((hold) => ({ ...hold, reasons: said(hold.reasons) })),
    noHolds: noHolds.map((none) => ({ ...none, reasons: said(none.reasons) })),
    spans,
    shortening,
    onNow,
    advice: shownAdvice(adviceFor.get(zone), said),
    reasons: said(reasons),
  }));
};

const shownAdvice = (advice: Advice | undefined, said: Say) =>
  advice
    ? {
        waxAgainBy: advice.waxAgainBy,
        asksConservator: advice.asksConservator,
        nextLook: advice.nextLook && { ...advice.nextLook, reasons: said(advice.nextLook.reasons) },
        ifCoated: advice.ifCoated,
        past: advice.past,
        expected: openFigure(advice.expected, said),
        reasons: said(advice.reasons),
      }
    : null;

const shownCurve = ({ zones, holds, ends, turnbull, fit, median, reasons }: HoldCurve, said: Say) => ({
  zones,
  holds,
  ends,
  // No end is written as null: there is no endless number in JSON.
  turnbull: turnbull
    ? turnbull.masses.map(({ left, right, mass }) => ({ left, right: Number.isFinite(right) ? right : null, mass }))
    : null,
  fit: fit && { from: fit.from, shape: openFigure(fit.shape, said), scale: openFigure(fit.scale, said) },
  median: openFigure(median, said),
  reasons: said(reasons),
});

/** How long coatings last in each exposure group and in the whole collection ('all'). Months. */
export const shownLives = (lives: readonly Life[], said: Say) =>
  lives.map((life) => ({
    group: life.group,
    event: life.event,
    ...shownCurve(life, said),
    inPassing: life.inPassing,
    withAndWithout: life.withAndWithout
      ? {
          with: shownCurve(life.withAndWithout.with, said),
          without: shownCurve(life.withAndWithout.without, said),
          removed: life.withAndWithout.removed,
        }
      : null,
  }));
