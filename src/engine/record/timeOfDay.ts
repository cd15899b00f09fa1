/** A time of the day as the clock on the wall says it, 24 hours: HH:MM. */
export const timeOfDay = /^([01]\d|2[0-3]):[0-5]\d$/;

export const isTimeOfDay = (text: string): boolean => timeOfDay.test(text);
