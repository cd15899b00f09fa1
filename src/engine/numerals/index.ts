/** What a person types for a number: figures, marks, groups of thousands, fractions. Knows no language but its decimal mark. */

export { plainFigures } from './plainFigures';
export { type DecimalMark, type NumberRead, readNumber } from './readNumber';
export { readTimeOfDay } from './timeOfDay';
export { readFeetAndInches, splitUnit } from './withUnit';
