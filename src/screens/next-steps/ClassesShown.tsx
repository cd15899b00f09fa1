import { type Classes, levelOf } from '../../engine/condition';
import { enClasses } from '../../engine/trade';
import { type NameOfThing, w } from '../../words';
import { ClassBadge } from '../parts';
import { Reasons } from '../parts/Reasons';

const words = w.nextSteps;

export const families = ['condition', 'urgency', 'recommendation'] as const;
export type Family = (typeof families)[number];

/** "CC2, plain signs". */
export const levelWritten = (family: Family, level: number): string => {
  const row = enClasses[family][level];
  return row ? words.level(row.id, row.name) : String(level);
};

/** The three classes as they hold now: dashed where proposed by rule, whole where a person set them. */
export function ClassBadges({ classes }: { readonly classes: Classes }) {
  return (
    <ul className="bare class-badges">
      {families.map((family) => {
        const level = levelOf(classes, family);
        return (
          <li key={family}>
            <span className="unseen">{words.className[family]}: </span>
            {level === null ? (
              <span className="soft small">{words.classOpen(words.classLetter[family])}</span>
            ) : (
              <ClassBadge
                family={words.classLetter[family]}
                level={level}
                set={classes.set?.[family] !== undefined}
                worded={family === 'urgency'}
              />
            )}
          </li>
        );
      })}
    </ul>
  );
}

/** Each class with who set it, or the reasons the rule has for it. */
export function ClassReasons({ classes, names }: { readonly classes: Classes; readonly names: NameOfThing }) {
  return (
    <dl className="class-reasons">
      {families.map((family) => {
        const proposal = classes[family];
        const set = classes.set?.[family];
        const proposed = proposal.level === null ? words.classNone : levelWritten(family, proposal.level);
        return (
          <div key={family} className="stack tight">
            <dt className="strong">
              {words.className[family]}: {set === undefined ? proposed : levelWritten(family, set)}
            </dt>
            <dd>
              <p>
                {set === undefined || !classes.set ? words.proposed : words.setInstead(classes.set.setBy, proposed)}
              </p>
              {set !== undefined && classes.set?.note && <p>{classes.set.note}</p>}
              <Reasons reasons={proposal.reasons} nameOf={names} />
            </dd>
          </div>
        );
      })}
    </dl>
  );
}
