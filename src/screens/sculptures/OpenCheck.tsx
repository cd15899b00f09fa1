import { useState } from 'react';
import { openPersonCheck } from '../../actions';
import type { SculptureRecord, Thing } from '../../engine/record';
import { w } from '../../words';
import { Button, CautionIcon, Field, Notice, Sheet } from '../parts';
import { Select } from '../parts/Select';
import { say, useDeed, useDesk, useTyped } from '../shell';

const words = w.sculptures.check;

interface OpenCheckProps {
  readonly record: SculptureRecord;
  readonly zones: readonly Thing<'zone'>[];
}

/** Something that could hurt someone, seen outside a round. */
export function OpenCheck({ record, zones }: OpenCheckProps) {
  const desk = useDesk();
  const [open, setOpen] = useState(false);
  const [what, setWhat] = useState('');
  const [zone, setZone] = useState('');
  const [missing, setMissing] = useState(false);
  const typed = useTyped(['check by a person', undefined, record.sculpture.thing], {
    what: [what, setWhat],
    zone: [zone, setZone],
  });
  const { run, refused, busy } = useDeed(typed);
  const set = () => {
    if (!what.trim()) return setMissing(true);
    return run(
      () => openPersonCheck(desk, record.sculpture.thing, { what, ...(zone ? { zone } : {}) }),
      () => {
        setOpen(false);
        setWhat('');
        say(words.openDone);
      },
    );
  };
  const places = [
    { value: '', label: words.whole },
    ...zones.map(({ thing, body }) => ({ value: thing, label: words.where(body.letter, body.name) })),
  ];
  return (
    <div className="row by-hand not-printed">
      <Button kind="danger" icon={<CautionIcon />} onClick={() => setOpen(true)}>
        {words.open}
      </Button>
      <Sheet
        open={open}
        title={words.openTitle}
        onClose={() => setOpen(false)}
        actions={
          <Button kind="main" size="round" onClick={set} disabled={busy}>
            {words.openDo}
          </Button>
        }
      >
        <p>{words.openWhat}</p>
        {typed.line}
        {refused && <Notice kind="problem" title={refused} />}
        <Field
          label={words.what}
          value={what}
          onChange={setWhat}
          maxLength={500}
          error={missing && !what.trim() ? words.whatMissing : undefined}
        />
        <Select label={words.zone} value={zone} onChange={setZone} options={places} />
      </Sheet>
    </div>
  );
}
