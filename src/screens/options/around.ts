import type { MoneyRules } from '../../engine/money';
import type { OptionFigures, Situation } from '../../engine/options';
import type { Reason, SculptureRecord, Thing } from '../../engine/record';
import type { NameOfThing } from '../../words';

/** What the parts of this page have to hand. */
export interface Around {
  readonly options: readonly Thing<'option'>[];
  readonly record: SculptureRecord;
  readonly names: NameOfThing;
  /** The options that could be reckoned. */
  readonly rows: readonly OptionFigures[];
  readonly rules: MoneyRules;
  /** Undefined while the record is being worked out. */
  readonly signs: readonly Reason[] | undefined;
  readonly situation: Situation | undefined;
}
