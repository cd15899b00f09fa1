import { plainFigures } from './plainFigures';

/** What was typed for a time of the day, as HH:MM of 24 hours: "14:30", "1430", "9.05 Uhr", "2:30 pm". Undefined where it is none. */
export const readTimeOfDay = (text: string): string | undefined => {
  const found = /^(\d{1,2}) ?[:.h]? ?([0-5]\d) ?(?:(?:uhr|h)|([ap])\.?m\.?)?$/i.exec(plainFigures(text));
  if (!found) return undefined;
  const half = found[3]?.toLowerCase();
  const said = Number(found[1]);
  if (half ? said < 1 || said > 12 : said > 23) return undefined;
  // Twelve at night is 0, twelve at noon 12.
  const hour = half ? (said % 12) + (half === 'p' ? 12 : 0) : said;
  return `${String(hour).padStart(2, '0')}:${found[2]}`;
};
