import type { EyesKnown, Measuring, WayOfMeasuring } from '../../actions';
import { isRefused, measuredAgain, saidByEye } from '../../engine/photo';
import type { Reason, Thing } from '../../engine/record';

/** One line of the table: what one way says of a kind. */
export interface ShareRow {
  readonly key: string;
  readonly way: WayOfMeasuring | 'eye';
  /** Where the finding comes from, for what the eye said: one kind may be there twice. */
  readonly origin?: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly of: 'photo' | 'zone';
  readonly day: string;
  /** It was measured in another part of the photo than the one shown. */
  readonly otherPart: boolean;
  readonly reasons: readonly Reason[];
  readonly measure?: string;
}

const order: readonly (WayOfMeasuring | 'eye')[] = ['eye', 'traced', 'dots', 'photo'];

/** The eye's figure and the measured ones of a kind, each with a range of the same surety. */
export const sharesOf = (
  at: Measuring,
  kind: string,
  partNow: string | undefined,
  eyes: EyesKnown | undefined,
): ShareRow[] => {
  const { round, size } = at;
  const eye = round ? eyes?.eyes[round.body.surveyor] : undefined;
  const byEye = at.byEye.flatMap(({ thing, body }): ShareRow[] => {
    if (body.kind !== kind || !body.coverage || !round) return [];
    const told = saidByEye(body.coverage, eye ? { sd: eye.sd } : {});
    const day = round.body.date;
    return [{ key: thing, way: 'eye', origin: body.origin, ...told, of: 'zone', day, otherPart: false, reasons: [] }];
  });
  const measured = at.measures
    .filter(({ body }) => body.kind === kind)
    .map((measure) => ({ ...measuredRow(measure, size), otherPart: measure.body.selector.value !== partNow }));
  return [...byEye, ...measured].sort((a, b) => order.indexOf(a.way) - order.indexOf(b.way));
};

const measuredRow = ({ thing, body }: Thing<'measure'>, size: Measuring['size']): Omit<ShareRow, 'otherPart'> => {
  const told = size ? measuredAgain(body, size) : undefined;
  const { value, low, high, method } = body.coverage;
  return {
    key: thing,
    way: method as WayOfMeasuring,
    ...(told && !isRefused(told) ? { value: told.value, low: told.low, high: told.high } : { value, low, high }),
    of: 'photo',
    day: body.date,
    reasons: told ? (isRefused(told) ? told.refused : told.reasons) : [],
    measure: thing,
  };
};
