import type { BodyOf, Reason } from '../record';
import { weatherRules } from '../trade';
import { type DewPoint, dewPoint } from './dewPoint';
import { because } from './reasonCodes';

/** What is read: degrees Celsius, percent, hours since it was last wet (undefined: not known). */
export type AirReading = Pick<BodyOf<'weather'>, 'before' | 'time' | 'air' | 'humidity' | 'surface'> & {
  readonly dryHours?: number | undefined;
};

/** What the product's own sheet asks of the surface, degrees Celsius. */
export interface OwnRange {
  readonly surfaceFrom?: number | undefined;
  readonly surfaceTo?: number | undefined;
  readonly product?: string;
}

export type GateWord = BodyOf<'weather'>['said'];

export interface Gate {
  readonly says: GateWord;
  readonly dewPoint: DewPoint;
  /** Kelvin of the surface over the dew point; low and high by what hand instruments err. */
  readonly margin: { readonly value: number; readonly low: number; readonly high: number };
  /** What stands against it, the gravest first; what speaks for it where nothing does. */
  readonly reasons: readonly Reason[];
}

const { margin: rule, humidity: damp, dry, coldest, hottest, frost, lastStart } = weatherRules;
const { airError, humidityError, surfaceError } = weatherRules;

/** Root of the sum of squares of how far the margin moves with each instrument's error. */
const marginOf = ({ air, humidity, surface }: AirReading, at: DewPoint): Gate['margin'] => {
  const value = surface - at.celsius;
  const byAir = dewPoint(air + airError.value, humidity).celsius - at.celsius;
  const damper = Math.min(100, humidity + humidityError.value);
  const byHumidity =
    damper > humidity
      ? ((dewPoint(air, damper).celsius - at.celsius) * humidityError.value) / (damper - humidity)
      : at.celsius - dewPoint(air, humidity - humidityError.value).celsius;
  const error = Math.hypot(surfaceError.value, byAir, byHumidity);
  return { value, low: value - error, high: value + error };
};

interface Against {
  readonly says: Exclude<GateWord, 'go'>;
  readonly reason: Reason;
}

const temperatures = ({ before, surface }: AirReading, own: OwnRange): Against[] => {
  const from = own.surfaceFrom ?? coldest.value;
  const to = own.surfaceTo ?? hottest.value;
  const by = (limit: number | undefined) => (limit === undefined ? '' : (own.product ?? ''));
  if (before !== 'wash' && surface < from)
    return [
      {
        says: 'wait',
        reason: because('weather: surface too cold', { surface, limit: from, product: by(own.surfaceFrom) }),
      },
    ];
  if (surface > to)
    return [
      { says: 'wait', reason: because('weather: surface too hot', { surface, limit: to, product: by(own.surfaceTo) }) },
    ];
  return [];
};

const hourOf = (time: string): number => Number(time.slice(0, 2)) + Number(time.slice(3)) / 60;

const dryness = ({ time, dryHours: hours }: AirReading): Against[] => {
  const needs = dry.value;
  if (hours === undefined) return [{ says: 'wait', reason: because('weather: dryness not known', { needs }) }];
  if (hours >= needs) return [];
  const says = hourOf(time) + needs - hours > lastStart.value ? 'not today' : 'wait';
  return [{ says, reason: because('weather: not dry long enough', { hours, needs }) }];
};

const dampness = ({ humidity }: AirReading, { value: margin }: Gate['margin'], at: DewPoint): Against[] => {
  const needs = rule.value;
  const point = at.frost ? 'frost' : 'dew';
  const near = because('weather: too near the dew point', {
    margin,
    needs,
    point,
    celsius: at.celsius,
    wanted: at.celsius + needs,
  });
  return [
    ...(margin < needs ? [{ says: 'wait', reason: near } as const] : []),
    ...(humidity >= damp.value
      ? [{ says: 'wait', reason: because('weather: too damp', { humidity, limit: damp.value }) } as const]
      : []),
  ];
};

/** Nothing stands against it: by how much, and whether the instruments could be wrong by more. */
const inFavour = (before: AirReading['before'], margin: Gate['margin'], at: DewPoint): Reason[] => {
  if (before === 'wash') return [because('weather: wash goes', {})];
  const needs = rule.value;
  const point = at.frost ? 'frost' : 'dew';
  return [
    because('weather: margin enough', { margin: margin.value, needs, point, celsius: at.celsius }),
    ...(margin.low < needs ? [because('weather: only just', { low: margin.low, needs })] : []),
  ];
};

/**
 * Whether air and surface let a wash or a coat begin now: go, wait (it may come right within the day) or not today. A wash is
 * held to frost and hot metal alone; all else also to dew point, humidity, dryness and the product's own range.
 */
export const gateOf = (reading: AirReading, own: OwnRange = {}): Gate => {
  const at = dewPoint(reading.air, reading.humidity);
  const margin = marginOf(reading, at);
  const frozen = Math.min(reading.air, reading.surface) <= frost.value;
  const against: Against[] = [
    ...(frozen
      ? [{ says: 'not today', reason: because('weather: frost', { limit: frost.value }) } as const]
      : temperatures(reading, own)),
    ...(reading.before === 'wash' ? [] : [...dampness(reading, margin, at), ...dryness(reading)]),
  ];
  const says: GateWord = against.some((each) => each.says === 'not today')
    ? 'not today'
    : against.length > 0
      ? 'wait'
      : 'go';
  const first = (word: GateWord) => against.filter((each) => each.says === word).map(({ reason }) => reason);
  const reasons = against.length > 0 ? [...first('not today'), ...first('wait')] : inFavour(reading.before, margin, at);
  return { says, dewPoint: at, margin, reasons };
};
