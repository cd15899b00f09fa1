import type { Reason } from '../../engine/record';
import type { FiguresAsked, Step } from './figures';
import type { FirstsAsked } from './firsts';
import type { FirmnessAsked } from './redraws';
import type { ThroughAsked } from './through';
import type { TrendsAsked } from './trends';

export type Job = FiguresAsked | FirstsAsked | FirmnessAsked | TrendsAsked | ThroughAsked;

/** What the page hands to the worker: the name of a database, and what to work out from it. */
export interface Asked {
  readonly store: string;
  readonly job: Job;
}

export type Said = { readonly step: Step } | { readonly problem: Reason } | { readonly end: true };
