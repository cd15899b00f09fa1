import { editPlanned } from '../../actions';
import { againstStarting, type HotDayFacts } from '../../engine/heat';
import type { Thing } from '../../engine/record';
import { cautionsAt, hotChecks } from '../../engine/trade';
import { measureNumber, type NameOfThing, number, w } from '../../words';
import { Button, Choices, Notice, Section } from '../parts';
import { Fold } from '../parts/Fold';
import { Reasons } from '../parts/Reasons';
import { useDeed, useDesk } from '../shell';
import { personText } from './insertNames';

const words = w.hotWork;

interface BeforeLitProps {
  readonly day: Thing<'hotDay'>;
  readonly facts: HotDayFacts;
  readonly names: NameOfThing;
  readonly mayWrite: boolean;
  readonly onEdit: () => void;
}

/** The card: what was agreed, what was looked at, and what is still open before anything is lit. */
export function BeforeLit({ day, facts, names, mayWrite, onEdit }: BeforeLitProps) {
  const desk = useDesk();
  const { run, refused } = useDeed();
  const { body } = day;
  const open = againstStarting(facts);
  const check = (checked: readonly string[]) =>
    void run(() => editPlanned(desk, 'hotDay', day.thing, { checked: [...checked] }));
  const rows: readonly (readonly [string, string])[] = [
    [words.card.permit, body.permit],
    [words.card.authorised, personText(body.authorisedBy)],
    [words.card.watcher, body.watcher ? personText(body.watcher) : ''],
    [words.card.clearZone, words.metres(measureNumber('length', body.clearZone, 1))],
    [words.card.watch, words.minutes(number(body.watchMinutes, 0))],
  ];
  return (
    <Section
      title={words.before.title}
      actions={
        mayWrite && (
          <span className="not-printed">
            <Button onClick={onEdit}>{words.edit}</Button>
          </span>
        )
      }
    >
      {refused && <Notice kind="problem" title={refused} />}
      {!body.workEnded &&
        (open.length > 0 ? (
          <Notice kind="caution" title={words.before.open}>
            <Reasons reasons={open} nameOf={names} />
          </Notice>
        ) : (
          <p>{words.before.none}</p>
        ))}
      <dl className="hot-facts">
        {rows.map(([what, said]) => (
          <Fact key={what} what={what} said={said} />
        ))}
      </dl>
      {body.note && <p className="file-name">{body.note}</p>}
      {open.length === 0 || body.workEnded ? (
        <Fold show={words.before.show} hide={words.before.hide}>
          <Checks day={day} onChange={mayWrite ? check : undefined} />
        </Fold>
      ) : (
        <Checks day={day} onChange={mayWrite ? check : undefined} />
      )}
    </Section>
  );
}

interface ChecksProps {
  readonly day: Thing<'hotDay'>;
  readonly onChange: ((checked: readonly string[]) => void) | undefined;
}

/** Put away once nothing is open: on a day under way the readings are what the hand goes to. */
function Checks({ day, onChange }: ChecksProps) {
  const { checked } = day.body;
  return (
    <div className="stack">
      {onChange ? (
        <Choices
          label={words.before.checks}
          tiles="full"
          options={hotChecks.map(({ id, name }) => ({ value: id, label: name }))}
          values={checked}
          onChange={onChange}
        />
      ) : (
        <ul>
          {hotChecks
            .filter(({ id }) => checked.includes(id))
            .map(({ id, name }) => (
              <li key={id}>{name}</li>
            ))}
        </ul>
      )}
      <ul className="soft">
        {cautionsAt('hot work').map(({ id, text }) => (
          <li key={id}>{text}</li>
        ))}
      </ul>
    </div>
  );
}

function Fact({ what, said }: { readonly what: string; readonly said: string }) {
  return (
    <>
      <dt>{what}</dt>
      <dd>{said || w.accessSheet.notSaid}</dd>
    </>
  );
}
