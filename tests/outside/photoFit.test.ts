import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { fitPhotos, isRefused, type PhotoFitKind, type Point } from '../../src/engine/photo';
import { aslant, aspect, type Known, ontoSize, pairsOf, sheared, similar, size } from '../published/knownPairs';

/**
 * R (Debian r-base-core): least squares by its own QR (qr.solve), and for homographies by its singular value decomposition (svd)
 * followed by nls. Each pair is left out by fitting anew without it. One set to a line in; matrix, sum of squares and residual out.
 */
const program = `
similarity <- function(x, y, u, v) {
  zero <- 0 * x; one <- zero + 1
  p <- qr.solve(rbind(cbind(x, -y, one, zero), cbind(y, x, zero, one)), c(u, v))
  rbind(c(p[1], -p[2], p[3]), c(p[2], p[1], p[4]), c(0, 0, 1))
}
affine <- function(x, y, u, v) rbind(t(qr.solve(cbind(x, y, 1), cbind(u, v))), c(0, 0, 1))
homography <- function(x, y, u, v) {
  zero <- 0 * x; one <- zero + 1
  rows <- rbind(cbind(x, y, one, zero, zero, zero, -u * x, -u * y, -u), cbind(zero, zero, zero, x, y, one, -v * x, -v * y, -v))
  h <- svd(rows, nv = 9)$v[, 9]; h <- h / h[9]
  start <- setNames(as.list(h[1:8]), letters[1:8])
  s <- c(one, zero); X <- c(x, x); Y <- c(y, y); Z <- c(u, v)
  fit <- nls(Z ~ (s * (a * X + b * Y + c) + (1 - s) * (d * X + e * Y + f)) / (g * X + h * Y + 1), start = start,
    control = nls.control(maxiter = 200, tol = 1e-9, scaleOffset = 1, warnOnly = TRUE))
  matrix(c(coef(fit), 1), 3, byrow = TRUE)
}
at <- function(m, x, y) { p <- m %*% rbind(x, y, 1); rbind(p[1, ] / p[3, ], p[2, ] / p[3, ]) }
for (line in readLines("stdin")) {
  parts <- strsplit(line, "|", fixed = TRUE)[[1]]
  n <- lapply(parts[2:5], function(p) as.numeric(strsplit(p, ",")[[1]]))
  x <- n[[1]]; y <- n[[2]]; u <- n[[3]]; v <- n[[4]]
  fit <- get(parts[1])
  m <- fit(x, y, u, v)
  left <- at(m, x, y) - rbind(u, v)
  out <- sapply(seq_along(x), function(i) sum((at(fit(x[-i], y[-i], u[-i], v[-i]), x[i], y[i]) - c(u[i], v[i]))^2))
  cat(sprintf("%.15g", c(t(m), sum(left^2), sqrt(mean(out)))), "\\n")
}
`;

test('matrices and leave-one-out residuals agree with R on thirty noisy sets of each way of laying', () => {
  const ways: readonly [PhotoFitKind, Known][] = [
    ['similarity', similar],
    ['affine', sheared],
    ['homography', aslant],
  ];
  const sets = ways.flatMap(([kind, known]) =>
    Array.from({ length: 30 }, (_, i) => ({ kind, pairs: pairsOf(known, 7 + (i % 6), 0.004 + 0.0004 * i, 300 + i) })),
  );
  const upright = ([x, y]: Point, of: typeof size): Point => [x, y * aspect(of)];
  const input = sets.map(({ kind, pairs }) => {
    const from = pairs.map((pair) => upright(pair.from, size));
    const onto = pairs.map((pair) => upright(pair.onto, ontoSize));
    return [kind, ...[from, onto].flatMap((of) => [of.map(([x]) => x), of.map(([, y]) => y)])].join('|');
  });
  const ran = spawnSync('/usr/bin/Rscript', ['-e', program], { input: `${input.join('\n')}\n`, encoding: 'utf8' });
  if (ran.status !== 0) throw new Error(ran.stderr);
  const answers = ran.stdout
    .trim()
    .split('\n')
    .map((line) => line.trim().split(/\s+/).map(Number));
  expect(answers).toHaveLength(sets.length);
  answers.forEach((answer, i) => {
    const { kind, pairs } = sets[i]!;
    const found = fitPhotos(pairs, size, ontoSize, kind);
    if (isRefused(found)) throw new Error(found.refused.map(({ code }) => code).join('; '));
    const [a, b, c, d, e, f, g, h, last] = answer as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    for (const [x, y] of [
      [0, 0],
      [1, 0.1],
      [0.4, 0.5],
      [0.9, 1],
    ] as const) {
      const v = y * aspect(size);
      const w = g * x + h * v + last;
      const [ours, theirs] = [
        found.through([x, y]),
        [(a * x + b * v + c) / w, (d * x + e * v + f) / w / aspect(ontoSize)],
      ];
      expect(Math.abs(ours[0] - theirs[0]!)).toBeLessThan(1e-6);
      expect(Math.abs(ours[1] - theirs[1]!)).toBeLessThan(1e-6);
    }
    const left = found.perPair.reduce((sum, { fitted }) => sum + fitted ** 2, 0);
    expect(Math.abs(left / answer[9]! - 1)).toBeLessThan(1e-8);
    expect(Math.abs(found.residual.share / answer[10]! - 1)).toBeLessThan(1e-5);
  });
});
