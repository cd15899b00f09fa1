/**
 * Saturation over water and over ice, hPa, `a · exp(b t / (c + t))`: Alduchov and Eskridge 1996, improved Magnus form. Over
 * water the form was seen on a page; over ice the numbers are from memory, held in the tests against a library and DIN 4108.
 */
const water = { a: 6.1094, b: 17.625, c: 243.04 };
const ice = { a: 6.1121, b: 22.587, c: 273.86 };

export interface DewPoint {
  /** Degrees Celsius at which the air of the reading begins to leave water, or frost, on a surface. */
  readonly celsius: number;
  /** It lies below nought: what comes is frost, and the figure is the frost point, about a degree above the dew point of the same air. */
  readonly frost: boolean;
}

/** Of air in degrees Celsius and relative humidity in percent (over water, as instruments tell it), above 0 to 100. */
export const dewPoint = (air: number, humidity: number): DewPoint => {
  if (!(humidity > 0 && humidity <= 100)) throw new Error(`A relative humidity of ${humidity} % has no dew point.`);
  const gamma = Math.log(humidity / 100) + (water.b * air) / (water.c + air);
  const celsius = (water.c * gamma) / (water.b - gamma);
  if (celsius >= 0) return { celsius, frost: false };
  const overIce = gamma + Math.log(water.a / ice.a);
  return { celsius: Math.min(0, (ice.c * overIce) / (ice.b - overIce)), frost: true };
};
