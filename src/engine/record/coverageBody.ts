import { fraction } from './bounds';
import { z } from './zod';

/** Coverage as a share 0 to 1 with its bin, and how it was judged. */
export const coverageBody = z
  .looseObject({
    value: fraction,
    low: fraction,
    high: fraction,
    method: z.enum(['ladder', 'ladder, adjusted', 'dots', 'traced', 'photo']),
  })
  .check(z.refine((c) => c.low <= c.value && c.value <= c.high, 'range ends out of order'));
