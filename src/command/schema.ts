/** Writes public/survey.schema.json anew: what a survey file may hold, from the very schemas that read it. */
import { writeFileSync } from 'node:fs';
import { surveySchema } from '../engine/exchange';

/** Two levels a line each, the rest of a line close: read by people in a change, kept on every tablet. */
const lines = (value: unknown, deep = 2): string => {
  if (deep === 0 || typeof value !== 'object' || value === null || Array.isArray(value)) return JSON.stringify(value);
  const rows = Object.entries(value).map(([key, inner]) => `${JSON.stringify(key)}: ${lines(inner, deep - 1)}`);
  return `{\n${rows.join(',\n')}\n}`;
};

writeFileSync('public/survey.schema.json', `${lines(surveySchema())}\n`);
