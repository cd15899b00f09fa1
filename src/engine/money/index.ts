/** Amounts of one currency, never added across two; interest and the worth of money over the years. */
export {};
