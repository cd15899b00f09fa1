/** Air, surface and dew point: whether it is a day to wash or wax. */
export { type DewPoint, dewPoint } from './dewPoint';
export { type AirReading, type Gate, type GateWord, gateOf, type OwnRange } from './gate';
export { type WeatherReason, weatherReasons } from './reasonCodes';
export { weatherAgainst } from './weatherCheck';
