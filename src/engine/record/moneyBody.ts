import { pattern, text } from './bounds';
import { z } from './zod';

/** An amount in whole minor units (cents) of an ISO 4217 currency. */
export const moneySchema = z.looseObject({ minor: z.int(), currency: pattern(/^[A-Z]{3}$/) });

/** Who stands behind a statement: a name is content that can be erased, a role is not. */
export const personInRole = z.looseObject({ role: text(100), name: z.optional(text(200)) });
