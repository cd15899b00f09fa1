/** Writes public/survey.schema.json anew: what a survey file may hold, from the very schemas that read it. */
import { writeFileSync } from 'node:fs';
import { surveySchema } from '../engine/exchange';

writeFileSync('public/survey.schema.json', `${JSON.stringify(surveySchema(), null, 2)}\n`);
