import { useState } from 'react';
import { joinZones } from '../../actions';
import type { Thing } from '../../engine/record';
import { area, w } from '../../words';
import { Button, Choices, Field, Notice, Sheet } from '../parts';
import { say, useDeed, useDesk, useTyped } from '../shell';
import { areaToday } from './areaToday';

const words = w.sculptures.zone;

interface JoinZonesProps {
  readonly zones: readonly Thing<'zone'>[];
  readonly onClose: () => void;
}

/** Two or more zones end on a day and become one. */
export function JoinZones({ zones, onClose }: JoinZonesProps) {
  const desk = useDesk();
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const [name, setName] = useState('');
  const [on, setOn] = useState(desk.today());
  const [tried, setTried] = useState(false);
  const typed = useTyped(['zones joined', undefined, zones[0]?.body.sculpture], {
    chosen: [chosen, setChosen],
    name: [name, setName],
    on: [on, setOn],
  });
  const { run, refused, busy } = useDeed(typed);
  const join = () => {
    setTried(true);
    if (chosen.length < 2 || !name.trim()) return;
    return run(
      () => joinZones(desk, chosen, { name: name.trim() }, on),
      () => {
        say(words.joinDone);
        onClose();
      },
    );
  };
  return (
    <Sheet
      open
      title={words.joinTitle}
      onClose={onClose}
      actions={
        <>
          <Button onClick={onClose}>{words.cancel}</Button>
          <Button kind="main" onClick={join} disabled={busy}>
            {words.joinDo}
          </Button>
        </>
      }
    >
      <p>{words.joinWhat}</p>
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <Choices
        label={words.joinWhich}
        tiles="full"
        options={zones.map((zone) => ({
          value: zone.thing,
          label: words.edit(zone.body.letter, zone.body.name),
          detail: area(areaToday(zone)),
        }))}
        values={chosen}
        onChange={setChosen}
        error={tried && chosen.length < 2 ? words.joinTwo : undefined}
      />
      <Field
        label={words.joinName}
        value={name}
        onChange={setName}
        maxLength={200}
        error={tried && !name.trim() ? words.nameMissing : undefined}
      />
      <Field label={words.splitOn} kind="date" value={on} onChange={setOn} short />
    </Sheet>
  );
}
