/** Tripwires, what is due, whether a treatment held, and the calendar file. */
export {};
