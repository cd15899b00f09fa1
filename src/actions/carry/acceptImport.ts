import type { Desk, Outcome } from '../desk';
import type { CarryPreview } from './openSurveyFile';

export interface AcceptOptions {
  /** The person knows they are two collections and wants them in one. */
  readonly otherCollection?: boolean;
  progress?(done: number, all: number): void;
}

export declare const acceptImport: (
  desk: Desk,
  preview: CarryPreview,
  options?: AcceptOptions,
) => Promise<Outcome<{ readonly deed: string; readonly added: number; readonly already: number; readonly copiedTablet: boolean }>>;

/** Physically removes exactly what that import added; refused once something here builds on it. */
export declare const undoImport: (desk: Desk, deed: string) => Promise<Outcome>;
