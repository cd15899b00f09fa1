import { useId } from 'react';
import { type HoldCurve, holdNumbers, type Life, wholeCollection } from '../../engine/hold';
import { date, list, type NameOfThing, w } from '../../words';
import { Section } from '../parts';
import { Fold } from '../parts/Fold';
import { Reasons } from '../parts/Reasons';
import { GroupCurve } from './GroupCurve';
import { groupName } from './groupName';
import { MonthsText } from './MonthsText';

const words = w.holds;

const counted = ({ holds, zones, ends }: HoldCurve): string =>
  words.count(words.holdsOf(holds), words.zonesOf(zones), words.endsOf(ends));

/** Counts, the median or why there is none, and what it rests on. */
export function Curve({ curve }: { readonly curve: HoldCurve }) {
  return (
    <>
      <p className="figures">{counted(curve)}</p>
      {curve.median ? (
        <p>
          {words.median} <MonthsText figure={curve.median} />
          {curve.fit && (
            <span className="soft small"> {curve.fit.from === 'own' ? words.shapeOwn : words.shapeBorrowed}</span>
          )}
        </p>
      ) : (
        <p className="soft">{words.noMedian}:</p>
      )}
      <Reasons reasons={[...curve.reasons, ...(curve.median?.reasons ?? [])]} label={words.why} />
    </>
  );
}

interface GroupProps {
  readonly life: Life;
  /** Written as a share. */
  readonly level: string;
  readonly names: NameOfThing;
}

export function Group({ life, level, names }: GroupProps) {
  const id = useId();
  const name = groupName(life.group);
  const { withAndWithout } = life;
  return (
    <li className="card hold-group">
      <article aria-labelledby={`${id} ${id}-event`} className="stack tight">
        <header>
          <h3 id={id}>{name}</h3>
          <p id={`${id}-event`} className="soft small">
            {life.event === 'spot' ? words.event.spot : words.event.cover(level)}
          </p>
        </header>
        <Curve curve={life} />
        <GroupCurve curve={life} title={words.curve(name)} />
        {withAndWithout && (
          // biome-ignore lint/a11y/useSemanticElements: nothing is filled in here, so it is no fieldset
          <div className="stack tight" role="group" aria-labelledby={`${id}-sides`}>
            <h4 id={`${id}-sides`}>{words.withAndWithout}</h4>
            <p className="soft">
              {words.withAndWithoutWhat(
                list(
                  withAndWithout.removed.map(({ zone, date: day }) => words.removedOn(names(zone) ?? zone, date(day))),
                ),
              )}
            </p>
            <div className="side-by-side">
              <div className="stack tight">
                <h5>{words.withCause}</h5>
                <Curve curve={withAndWithout.with} />
              </div>
              <div className="stack tight">
                <h5>{words.withoutCause}</h5>
                <Curve curve={withAndWithout.without} />
              </div>
            </div>
          </div>
        )}
      </article>
    </li>
  );
}

interface GroupsProps extends Omit<GroupProps, 'life'> {
  readonly lives: readonly Life[];
}

/** Groups with enough zones for a curve first, the whole collection after them; the small ones are put away and counted. */
export function Groups({ lives, ...more }: GroupsProps) {
  const isWhole = ({ group }: Life) => group === wholeCollection;
  const large = lives.filter((life) => !isWhole(life) && life.zones >= holdNumbers.zonesForCurve.value);
  const small = lives.filter((life) => !isWhole(life) && life.zones < holdNumbers.zonesForCurve.value);
  const card = (life: Life) => <Group key={`${life.group} ${life.event}`} life={life} {...more} />;
  if (lives.length === 0) return null;
  return (
    <Section title={words.groups} lead={words.groupsWhat}>
      <ul className="bare hold-groups">
        {large.map(card)}
        {lives.filter(isWhole).map(card)}
      </ul>
      {small.length > 0 && (
        <Fold show={words.smallGroups(small.length)} hide={words.smallGroupsHide}>
          <ul className="bare hold-groups">{small.map(card)}</ul>
        </Fold>
      )}
    </Section>
  );
}
