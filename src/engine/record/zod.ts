import * as z from 'zod/mini';

// The page's policy forbids making code from text, which Zod tries as soon as the first schema is made: so it is told before any is.
z.config({ jitless: true });

export { z };
