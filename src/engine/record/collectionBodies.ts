import { fraction, listOf, maybe, note, number, pattern, text, whole } from './bounds';
import { coverageBody } from './coverageBody';
import { day, thingName, uuid } from './entry';
import { z } from './zod';

export const collectionBody = z.looseObject({ name: text(200), invented: maybe(z.literal(true)) });

/** Hazards a collection has set for itself; kinds not named keep the project's own. `version` rises with each change. */
export const scaleBody = z.looseObject({
  version: whole(1),
  hazards: z.record(z.string(), number(0, 1)),
  /** Zone index under which action is due, 0 to 100. */
  actionLevel: number(0, 100),
});

/** What a collection set for itself about coatings: when the green counts as back, and how much chance of it is too much. */
export const holdRulesBody = z.looseObject({
  version: whole(1),
  /** Coverage of green in the metal, share 0 to 1, from which it counts as back where nobody makes looks. */
  returnLevel: fraction,
  /** Chance of return, share 0 to 1, at which the next coating is due. */
  chance: number(0.01, 0.99),
});

/** The air of the place, as the standard on corrosivity of atmospheres asks for it; yearly means. */
export const climateBody = z.looseObject({
  /** Air temperature, degrees Celsius. */
  temperature: number(-60, 60),
  /** Relative humidity, percent. */
  humidity: number(0, 100),
  /** Deposition of sulfur dioxide, mg/(m2 day). */
  so2: number(0, 10000),
  /** Deposition of chloride, mg/(m2 day). */
  chloride: number(0, 100000),
  /** Where the four figures come from. */
  from: maybe(text(500)),
  note,
});

/**
 * Content taken out of the survey for good: a person's name, or a photo. The entries named lose their content wherever surveys are
 * joined, and bytes of the photos named are refused from then on. Never taken away itself.
 */
export const erasureBody = z.looseObject({
  of: z.enum(['name', 'photo']),
  /** Ids of the entries that are gone. */
  entries: listOf(uuid, 0, 10000),
  /** SHA-256 of the photos whose bytes are gone. */
  hashes: listOf(pattern(/^[0-9a-f]{64}$/), 0, 1000),
  /** Name things that are gone for good: an entry of theirs made elsewhere meanwhile does not bring the name back. */
  names: maybe(listOf(pattern(/^name\/.{1,380}$/), 0, 100)),
  reason: text(500),
  date: day,
});

export const surveyorBody = z.looseObject({ role: text(100) });
export const personNameBody = z.looseObject({ surveyor: thingName, name: text(200) });

/** A drill on drawn patches whose coverage is known: what the eye said beside what is true. */
export const eyeCheckBody = z.looseObject({
  surveyor: thingName,
  date: day,
  /** Of the drawing, so that the same patches can be drawn again. */
  seed: z.int(),
  patches: listOf(z.looseObject({ truth: fraction, said: coverageBody }), 1, 200),
  note,
});
