const two = (n: number): string => String(n).padStart(2, '0');

/** A moment as ISO 8601 with the offset of this device, e.g. 2026-05-12T10:41:07.120+01:00. */
export const instantOf = (moment: Date): string => {
  const offset = -moment.getTimezoneOffset();
  const away = Math.abs(offset);
  const zone = `${offset < 0 ? '-' : '+'}${two(Math.trunc(away / 60))}:${two(away % 60)}`;
  const time = `${two(moment.getHours())}:${two(moment.getMinutes())}:${two(moment.getSeconds())}`;
  return `${dayOf(moment)}T${time}.${String(moment.getMilliseconds()).padStart(3, '0')}${zone}`;
};

/** The calendar day where this device is, YYYY-MM-DD. */
export const dayOf = (moment: Date): string =>
  `${String(moment.getFullYear()).padStart(4, '0')}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;

export const now = (): string => instantOf(new Date());
export const today = (): string => dayOf(new Date());
