/** Text as two people may have typed it apart: one case, one form of accents, single blanks. */
export const folded = (text: string): string => text.normalize('NFC').trim().replace(/\s+/g, ' ').toLowerCase();
