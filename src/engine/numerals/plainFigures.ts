/** The nought of further scripts whose ten figures follow each other: Arabic, Persian, Devanagari, full width. Source: the Unicode Standard, category Nd. */
const noughts = [0x0660, 0x06f0, 0x0966, 0xff10] as const;

const westernFigure = (figure: string): string => {
  const code = figure.charCodeAt(0);
  const nought = noughts.find((first) => code >= first && code < first + 10);
  return nought === undefined ? figure : String(code - nought);
};

/**
 * The same text in the signs of a plain keyboard: western figures, one kind of space, minus, apostrophe and inch mark, full-width and
 * Arabic marks as point and comma, "½" as " 1/2". Superscript figures stay: "m²" is no 2.
 */
export const plainFigures = (text: string): string =>
  text
    .replace(/[\u0660-\u0669\u06f0-\u06f9\u0966-\u096f\uff10-\uff19]/g, westernFigure)
    .replace(/[¼-¾⅐-⅞]/g, (fraction) => ` ${fraction.normalize('NFKC')}`)
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[−–‐‑－]/g, '-')
    .replace(/[，٫]/g, ',')
    .replace(/[．]/g, '.')
    .replace(/[’‘′ʹ٬´`]/g, "'")
    .replace(/[″”“„]|''/g, '"')
    .replace(/％/g, '%')
    .replace(/\s+/g, ' ')
    .trim();
