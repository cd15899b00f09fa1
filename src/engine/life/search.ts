/** Where a function with one top between low and high has it: golden sections, with parabolas where they serve (Brent 1973, ch. 5). */
export const topOf = (
  f: (x: number) => number,
  low: number,
  high: number,
  start: number,
  tolerance = 1e-9,
): { readonly at: number; readonly value: number } => {
  const golden = (3 - Math.sqrt(5)) / 2;
  let [a, b] = [low, high];
  let [x, w, v] = [start, start, start];
  let fx = f(x);
  let [fw, fv] = [fx, fx];
  let [step, before] = [0, 0];
  for (let i = 0; i < 200; i++) {
    const middle = (a + b) / 2;
    const near = tolerance * (Math.abs(x) + 1);
    if (Math.abs(x - middle) <= 2 * near - (b - a) / 2) break;
    let parabola = false;
    if (Math.abs(before) > near) {
      const r = (x - w) * (fx - fv);
      const q0 = (x - v) * (fx - fw);
      const q = 2 * (q0 - r);
      const p = ((x - v) * q0 - (x - w) * r) * (q > 0 ? -1 : 1);
      const over = Math.abs(q);
      if (over > 0 && Math.abs(p) < Math.abs(0.5 * over * before) && p > over * (a - x) && p < over * (b - x)) {
        before = step;
        step = p / over;
        if (x + step - a < 2 * near || b - x - step < 2 * near) step = x < middle ? near : -near;
        parabola = true;
      }
    }
    if (!parabola) {
      before = x < middle ? b - x : a - x;
      step = golden * before;
    }
    const u = x + (Math.abs(step) >= near ? step : step > 0 ? near : -near);
    const fu = f(u);
    if (fu >= fx) {
      if (u < x) b = x;
      else a = x;
      [v, w, x] = [w, x, u];
      [fv, fw, fx] = [fw, fx, fu];
    } else {
      if (u < x) a = u;
      else b = u;
      if (fu >= fw || w === x) {
        [v, w] = [w, u];
        [fv, fw] = [fw, fu];
      } else if (fu >= fv || v === x || v === w) [v, fv] = [u, fu];
    }
  }
  return { at: x, value: fx };
};

/**
 * Where a function that is positive at `inside` comes down to zero on the way to `outside`; null where it has not by `outside`.
 * Strides grow until it has, then false position that never keeps the same end twice (Illinois).
 */
export const zeroTowards = (
  f: (x: number) => number,
  inside: number,
  outside: number,
  stride: number,
): number | null => {
  const way = Math.sign(outside - inside);
  let [a, fa] = [inside, f(inside)];
  let [b, fb] = [a, fa];
  for (let reach = stride; fb > 0; reach *= 2) {
    if (b === outside) return null;
    [a, fa] = [b, fb];
    b = way * (b + way * reach) > way * outside ? outside : b + way * reach;
    fb = f(b);
    if (Number.isNaN(fb)) return null;
  }
  for (let i = 0; i < 100 && Math.abs(b - a) > 1e-10 * (1 + Math.abs(a)) && fb !== 0; i++) {
    // Where one end is bottomless there is no line to draw: halve.
    const cut = Number.isFinite(fb) ? a + ((b - a) * fa) / (fa - fb) : (a + b) / 2;
    const c = cut === a || cut === b ? (a + b) / 2 : cut;
    const fc = f(c);
    if (fc > 0 === fa > 0) {
      [a, fa] = [c, fc];
      fb /= 2;
    } else {
      [b, fb] = [c, fc];
      fa /= 2;
    }
    if (Math.abs(fc) < 1e-12) return c;
  }
  return (a + b) / 2;
};
