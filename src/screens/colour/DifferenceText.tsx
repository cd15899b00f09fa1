import { type Compared, isCompared } from '../../engine/colour';
import { type NameOfThing, w } from '../../words';
import { Fold } from '../parts/Fold';
import { Reasons } from '../parts/Reasons';

const words = w.colour;

interface DifferenceTextProps {
  /** Against what: the heading of the figure. */
  readonly against: string;
  /** Undefined: there is nothing to hold it against, and `nothing` says so. */
  readonly compared: Compared | undefined;
  readonly nothing: string;
  readonly nameOf?: NameOfThing;
}

/** One difference: the figure with its range, which way it went, and what it rests on; or why there is none. */
export function DifferenceText({ against, compared, nothing, nameOf }: DifferenceTextProps) {
  return (
    <div className="colour-difference">
      <h4>{against}</h4>
      {!compared ? (
        <p className="soft">{nothing}</p>
      ) : isCompared(compared) ? (
        <>
          <p className="strong figures">{words.units(compared.value, compared.low, compared.high)}</p>
          <p>{compared.low > 0 ? words.direction(compared.parts) : words.within}</p>
          <Fold show={words.why} hide={words.whyHide}>
            <Reasons reasons={compared.reasons} nameOf={nameOf} />
          </Fold>
        </>
      ) : (
        <>
          <p className="strong">{words.notTold}</p>
          <Reasons reasons={compared.refused} nameOf={nameOf} />
        </>
      )}
    </div>
  );
}

/** The same in a cell of a table. */
export const differenceInBrief = (compared: Compared | undefined): string => {
  if (!compared) return words.dash;
  if (isCompared(compared)) return words.inBrief(compared.value, compared.low, compared.high);
  const why = compared.refused.map(({ code }) => words.differs[code]).filter((said) => said !== undefined);
  return why.length > 0 ? words.notToldShort(why) : words.notToldAnew;
};
