import { useState } from 'react';
import { setRunOff } from '../../actions';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { AddIcon, Button, Notice, Sheet } from '../parts';
import { Select } from '../parts/Select';
import { say, useDeed, useDesk } from '../shell';

const words = w.zoneMap;

/** Water between two zones named in words: needs no picture. */
export function AddRunOff({ zones }: { readonly zones: readonly Thing<'zone'>[] }) {
  const desk = useDesk();
  const [open, setOpen] = useState(false);
  const [from, setFrom] = useState(zones[0]?.thing ?? '');
  const [to, setTo] = useState(zones[1]?.thing ?? '');
  const { run, refused } = useDeed();
  const options = zones.map(({ thing, body }) => ({ value: thing, label: words.outline.zone(body.letter, body.name) }));
  const letter = (zone: string) => zones.find(({ thing }) => thing === zone)?.body.letter ?? '';
  const add = () =>
    run(
      () => setRunOff(desk, from, to),
      () => {
        say(words.outline.waterDrawn(letter(from), letter(to)));
        setOpen(false);
      },
    );
  return (
    <>
      <div className="row not-printed">
        <Button icon={<AddIcon />} onClick={() => setOpen(true)}>
          {words.waterAdd}
        </Button>
      </div>
      <Sheet
        open={open}
        title={words.waterAdd}
        onClose={() => setOpen(false)}
        actions={
          <Button kind="main" size="round" onClick={add}>
            {words.waterAddDo}
          </Button>
        }
      >
        {refused && <Notice kind="problem" title={refused} />}
        <Select label={words.waterFromZone} value={from} onChange={setFrom} options={options} />
        <Select label={words.waterToZone} value={to} onChange={setTo} options={options} />
      </Sheet>
    </>
  );
}
