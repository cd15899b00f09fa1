/** Air, surface and dew point: whether it is a day to wash or wax. */
export {};
