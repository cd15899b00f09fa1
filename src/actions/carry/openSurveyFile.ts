import type { ImportPreview } from '../../engine/exchange';
import type { Entry, Reason } from '../../engine/record';
import type { Desk } from '../desk';

/** What carrying a file in would change; nothing is stored yet. */
export interface CarryPreview {
  readonly fileName: string;
  readonly collection: string;
  /** Another collection than the one here: never united in silence. */
  readonly otherCollection: boolean;
  /** The file holds the invented collection and this is a real one. */
  readonly inventedIntoReal: boolean;
  readonly entries: readonly Entry[];
  readonly changes: ImportPreview;
}

export type SurveyFileOpened =
  | { readonly ok: true; readonly preview: CarryPreview }
  | { readonly ok: false; readonly reason: Reason; readonly problems: readonly Reason[] };

export declare const openSurveyFile: (desk: Desk, file: File) => Promise<SurveyFileOpened>;
