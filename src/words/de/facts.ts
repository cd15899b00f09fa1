import type { facts as english } from '../en/facts';
import type { Same } from '../tongue';
import { numbersSaid } from './numbersSaid';
import { sourcesSaid } from './sourcesSaid';

/** What a row of the engine says of itself beside its figure. */
export const facts: Same<typeof english> = { ...sourcesSaid, ...numbersSaid };
