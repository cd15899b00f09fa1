import type { Scorer } from '../../engine/campaign';

/** By name where there is one: "Ilka Imagined (Conservator)"; else by role. */
export const scorerText = ({ role, name }: Pick<Scorer, 'role' | 'name'>): string =>
  name ? `${name} (${role})` : role;
