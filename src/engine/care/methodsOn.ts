import type { BodyOf, Thing } from '../record';
import { methods } from '../trade';

/** What may and may not be done to a work. */
export interface MethodsOn {
  readonly allowed: readonly string[];
  readonly forbidden: readonly string[];
  readonly alsoForbidden: readonly string[];
  /** Nobody has said it of this work: it is the usual list. */
  readonly usual: boolean;
}

const usual = (what: 'allowed' | 'forbidden'): readonly string[] =>
  methods.filter((method) => method.usual === what).map(({ id }) => id);

/** As the work's own sheet says, else the usual list. */
export const methodsOn = (sheet: Thing<'methodSheet'> | undefined): MethodsOn => {
  const body: BodyOf<'methodSheet'> | undefined = sheet?.body;
  if (!body) return { allowed: usual('allowed'), forbidden: usual('forbidden'), alsoForbidden: [], usual: true };
  const { allowed, forbidden, alsoForbidden = [] } = body;
  return { allowed, forbidden, alsoForbidden, usual: false };
};
