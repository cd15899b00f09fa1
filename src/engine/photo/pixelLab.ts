/** sRGB primaries to CIE XYZ, each row divided by the D65 white point. Source: IEC 61966-2-1:1999 and CIE 15; from memory. */
const toWhite = [
  [
    0.4123907992659593 / 0.9504559270516716,
    0.357584339383878 / 0.9504559270516716,
    0.1804807884018343 / 0.9504559270516716,
  ],
  [0.21263900587151027, 0.715168678767756, 0.07219231536073371],
  [
    0.01933081871559182 / 1.0890577507598784,
    0.11919477979462598 / 1.0890577507598784,
    0.9505321522496607 / 1.0890577507598784,
  ],
] as const;

const linear = Float64Array.from({ length: 256 }, (_, i) => {
  const c = i / 255;
  return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
});

const f = (t: number): number => (t > 216 / 24389 ? Math.cbrt(t) : (t * 24389) / 27 / 116 + 16 / 116);

export const pixelLab = (r: number, g: number, b: number) => {
  const [x, y, z] = toWhite.map(([u, v, w]) =>
    f(u * (linear[r] ?? 0) + v * (linear[g] ?? 0) + w * (linear[b] ?? 0)),
  ) as [number, number, number];
  return { L: 116 * y - 16, a: 500 * (x - y), b: 200 * (y - z) };
};
