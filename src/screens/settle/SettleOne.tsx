import { useMemo, useState } from 'react';
import { sculptureRecordOf, settle, surveyors, type Unsettled } from '../../actions';
import type { Entry } from '../../engine/record';
import { date, type NameOfThing, sayReason, thingNames, w } from '../../words';
import { Button, Choice, Notice, Page } from '../parts';
import { Fold } from '../parts/Fold';
import { say, useDesk, useQuestion } from '../shell';
import { fieldValue } from './fieldValue';
import { type Choices, chosenBeforehand, type FieldRow, settledBody, sideBySide } from './sideBySide';
import { titleOf } from './titleOf';

const words = w.settle;

interface SettleOneProps {
  readonly unsettled: Unsettled;
  /** How many others wait. */
  readonly left: number;
  readonly onDone: () => void;
  readonly onBack: () => void;
}

/** One thing with its versions side by side, field by field. */
export function SettleOne({ unsettled, left, onDone, onBack }: SettleOneProps) {
  const desk = useDesk();
  const { thing, kind, within, versions, base } = unsettled;
  const record = useQuestion(sculptureRecordOf(desk, within)) ?? undefined;
  const people = useQuestion(surveyors(desk));
  const nameOf: NameOfThing = useMemo(
    () => (record ? thingNames(record, people ?? []) : (name) => people?.find((one) => one.thing === name)?.role),
    [record, people],
  );
  const living = useMemo(() => versions.filter(({ gone }) => !gone), [versions]);
  const away = versions.find(({ gone }) => gone);
  const rows = useMemo(() => sideBySide(living, base), [living, base]);
  const [chosen, setChosen] = useState<Choices>({});
  const [tried, setTried] = useState(false);
  const [fault, setFault] = useState('');
  const choices = { ...chosenBeforehand(rows), ...chosen };
  const { title, where } = titleOf(kind, versions[0]?.body ?? {}, record);
  const differing = rows.filter(({ changedBy }) => changedBy !== 'same');
  const alike = rows.filter(({ changedBy }) => changedBy === 'same');
  const placeOf = (entry: Entry) => versions.indexOf(entry) + 1;

  const finish = async (choice: Parameters<typeof settle>[2]) => {
    const outcome = await settle(desk, thing, choice);
    if (!outcome.ok) {
      setFault(sayReason(outcome.reason, nameOf));
      return;
    }
    say(words.settled);
    onDone();
  };
  const settleSo = () => {
    const body = settledBody(rows, choices);
    setTried(true);
    if (body) void finish({ body });
  };
  const takeWhole = (i: number) => setChosen(Object.fromEntries(differing.map(({ field }) => [field, i])));

  return (
    <Page
      title={title}
      over={where}
      actions={
        <>
          <Button onClick={onBack}>{words.backToList}</Button>
          {living.length > 0 && (
            <Button kind="main" onClick={settleSo}>
              {away ? words.keepLiving : words.settleDo}
            </Button>
          )}
        </>
      }
    >
      {left > 0 && <p className="soft">{words.left(left)}</p>}
      <ul className="bare versions">
        {versions.map((entry, i) => (
          <li key={entry.id} className="card stack tight">
            <h2>{words.versionOf(placeOf(entry))}</h2>
            <p>{words.writtenBy(nameOf(entry.by) ?? words.unknownPerson, whenWritten(entry))}</p>
            <p className="soft small">
              {[entry.gone ? words.takenAway : away && words.stillThere, i === 0 && words.leads]
                .filter(Boolean)
                .join(' · ')}
            </p>
            {!entry.gone && living.length > 1 && (
              <Button kind="quiet" onClick={() => takeWhole(living.indexOf(entry))}>
                {words.takeAll(placeOf(entry))}
              </Button>
            )}
          </li>
        ))}
      </ul>
      {away && (
        <Notice
          kind="caution"
          title={words.goneQuestion}
          actions={<Button onClick={() => finish({ version: away.id })}>{words.keepGone}</Button>}
        />
      )}
      {differing.map((row) => (
        <FieldChoice
          key={row.field}
          row={row}
          places={living.map(placeOf)}
          nameOf={nameOf}
          chosen={choices[row.field]}
          missing={tried}
          onChoose={(i) => setChosen({ ...chosen, [row.field]: i })}
        />
      ))}
      {alike.length > 0 && (
        <Fold show={words.sameFold(alike.length)} hide={words.sameHide}>
          <dl className="same-fields">
            {alike.map(({ field, values }) => (
              <div key={field}>
                <dt className="strong">{words.fields[field] ?? field}</dt>
                <dd>{fieldValue(field, values[0], nameOf)}</dd>
              </div>
            ))}
          </dl>
        </Fold>
      )}
      {tried && !settledBody(rows, choices) && <Notice kind="problem" title={words.notChosen} />}
      {fault && <Notice kind="problem" title={fault} />}
    </Page>
  );
}

/** As the device that wrote it had it. */
const whenWritten = ({ at }: Entry): string => `${date(at.slice(0, 10))}, ${at.slice(11, 16)}`;

interface FieldChoiceProps {
  readonly row: FieldRow;
  /** Numbers of the versions shown, in their order. */
  readonly places: readonly number[];
  readonly nameOf: NameOfThing;
  readonly chosen: number | undefined;
  readonly missing: boolean;
  readonly onChoose: (i: number) => void;
}

function FieldChoice({ row, places, nameOf, chosen, missing, onChoose }: FieldChoiceProps) {
  const { field, before, values, changedBy } = row;
  const hint = [
    typeof changedBy === 'number' ? words.onlyChanged(places[changedBy] ?? changedBy + 1) : words.bothChanged,
    before === undefined ? undefined : words.beforeWas(fieldValue(field, before, nameOf)),
  ];
  return (
    <Choice
      label={words.fields[field] ?? field}
      hint={hint.filter(Boolean).join('. ')}
      error={missing && chosen === undefined ? words.bothChanged : undefined}
      value={chosen === undefined ? undefined : String(chosen)}
      onChange={(value) => onChoose(Number(value))}
      options={values.map((value, i) => ({
        value: String(i),
        label: fieldValue(field, value, nameOf),
        detail: words.versionOf(places[i] ?? i + 1),
      }))}
    />
  );
}
