/** Bounds of heat near inserts, limits and temperature logs, the day of hot work, ladders. */
export {};
