import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { drawnFrom } from '../../src/engine/chance';
import { type Interval, survivalAt, turnbull, weibull } from '../../src/engine/life';

/** R's package survival (Debian r-cran-survival): survreg for the Weibull fit, survfit for Turnbull's steps. One set to a line in, one out. */
const program = `
suppressPackageStartupMessages(library(survival))
for (line in readLines("stdin")) {
  parts <- strsplit(line, "|", fixed = TRUE)[[1]]
  ends <- lapply(parts[1:2], function(p) as.numeric(strsplit(p, ",")[[1]]))
  lower <- ends[[1]]; upper <- ends[[2]]
  lower[lower == 0] <- NA; upper[!is.finite(upper)] <- NA
  lives <- Surv(lower, upper, type = "interval2")
  fit <- survreg(lives ~ 1, dist = "weibull", control = survreg.control(maxiter = 200, rel.tolerance = 1e-12))
  steps <- survfit(lives ~ 1, conf.type = "none")
  at <- as.numeric(strsplit(parts[3], ",")[[1]])
  lasting <- summary(steps, times = at, extend = TRUE)$surv
  cat(sprintf("%.12g", c(1 / fit$scale, exp(coef(fit)[[1]]), fit$loglik[1], lasting)), "\\n")
}
`;

const lives = (seed: number): Interval[] => {
  const drawn = drawnFrom(seed);
  const shape = 0.7 + 3 * drawn.uniform();
  return Array.from({ length: 20 + drawn.below(60) }, () => {
    const end = 10 * (-Math.log(1 - drawn.uniform())) ** (1 / shape);
    const first = Math.floor(end / 2) * 2;
    const kind = drawn.uniform();
    if (kind < 0.15) return { lower: end, upper: end };
    if (kind < 0.35) return { lower: Math.max(1, first), upper: Number.POSITIVE_INFINITY };
    return { lower: first, upper: first + 2 * (1 + drawn.below(3)) };
  });
};

test('shape, scale, log-likelihood and steps agree with the R package survival on forty seeded sets', () => {
  const sets = Array.from({ length: 40 }, (_, i) => lives(9200 + i));
  const fits = sets.map((set) => weibull(set));
  const known = sets.map((set) => {
    // Where the steps are sure: elsewhere each program may draw the fall where it likes.
    const steps = turnbull(set);
    return [3, 7, 11, 15].filter((t) => survivalAt(steps, t).low === survivalAt(steps, t).high);
  });
  const input = sets
    .map((set, i) =>
      [
        set.map((l) => l.lower),
        set.map((l) => (Number.isFinite(l.upper) ? l.upper : 'Inf')),
        [0, ...(known[i] ?? [])],
      ].join('|'),
    )
    .join('\n');
  const ran = spawnSync('/usr/bin/Rscript', ['-e', program], { input: `${input}\n`, encoding: 'utf8' });
  if (ran.status !== 0) throw new Error(ran.stderr);
  const answers = ran.stdout
    .trim()
    .split('\n')
    .map((line) => line.trim().split(/\s+/).map(Number));
  expect(answers).toHaveLength(sets.length);
  expect(known.flat().length).toBeGreaterThan(20);
  answers.forEach(([shape = 0, scale = 0, logLikelihood = 0, , ...lasting], i) => {
    const fit = fits[i];
    if (!fit?.ok) throw new Error(`Set ${i} has no fit here: ${fit?.reason.code}`);
    expect(Math.abs(fit.shape.value / shape - 1)).toBeLessThan(1e-5);
    expect(Math.abs(fit.scale.value / scale - 1)).toBeLessThan(1e-5);
    expect(fit.logLikelihood).toBeCloseTo(logLikelihood, 6);
    const steps = turnbull(sets[i] as Interval[]);
    (known[i] ?? []).forEach((t, j) => {
      // survfit leaves its steps of self-consistency early; the published masses are checked to 1e-5 elsewhere.
      expect(Math.abs(survivalAt(steps, t).low - (lasting[j] as number))).toBeLessThan(5e-3);
    });
  });
});
