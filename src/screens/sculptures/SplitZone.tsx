import { useState } from 'react';
import { useLocation } from 'wouter';
import { splitZone } from '../../actions';

import { number, typedPercent, w, whole } from '../../words';
import { AddIcon, Button, Field, Notice, Sheet } from '../parts';
import { pathTo, say, useDeed, useDesk, useTyped } from '../shell';

const words = w.sculptures.zone;

interface SplitZoneProps {
  readonly sculpture: string;
  readonly zone: string;
  readonly name: string;
  readonly onClose: () => void;
}

/** The zone ends on a day and lives on in its parts, with shares of its area that make 100 %. */
export function SplitZone({ sculpture, zone, name, onClose }: SplitZoneProps) {
  const desk = useDesk();
  const [, go] = useLocation();
  const [parts, setParts] = useState([
    { key: 1, name: `${name} 1`, share: '50' },
    { key: 2, name: `${name} 2`, share: '50' },
  ]);
  const [on, setOn] = useState(desk.today());
  const typed = useTyped(['zone split', undefined, zone], { parts: [parts, setParts], on: [on, setOn] });
  const { run, refused, busy } = useDeed(typed);
  const sum = parts.reduce((total, part) => total + (typedPercent(part.share) ?? 0), 0);
  const right =
    Math.abs(sum - 100) < 0.05 && parts.every((part) => part.name.trim() && (typedPercent(part.share) ?? 0) > 0);
  const set = (key: number, change: { name?: string; share?: string }) =>
    setParts(parts.map((part) => (part.key === key ? { ...part, ...change } : part)));
  const split = () =>
    run(
      () =>
        splitZone(
          desk,
          zone,
          parts.map((part) => ({ name: part.name.trim(), share: (typedPercent(part.share) ?? 0) / 100 })),
          on,
        ),
      ({ zones }) => {
        say(words.splitDone(zones.length));
        go(pathTo.zones(sculpture));
      },
    );
  return (
    <Sheet
      open
      title={words.split}
      onClose={onClose}
      actions={
        <>
          <Button onClick={onClose}>{words.cancel}</Button>
          <Button kind="main" onClick={split} disabled={busy || !right}>
            {words.splitDo}
          </Button>
        </>
      }
    >
      <p>{words.splitWhat}</p>
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      {parts.map((part, i) => (
        <fieldset className="part" key={part.key}>
          <legend>{words.splitPart(whole(i + 1))}</legend>
          <Field
            label={words.splitName}
            value={part.name}
            onChange={(value) => set(part.key, { name: value })}
            maxLength={200}
          />
          <Field
            label={words.splitShare}
            takes="percent"
            value={part.share}
            onChange={(value) => set(part.key, { share: value })}
          />
        </fieldset>
      ))}
      <div className="row">
        <Button
          icon={<AddIcon />}
          onClick={() => {
            const n = parts.length + 1;
            setParts([...parts, { key: n, name: `${name} ${n}`, share: '' }]);
          }}
        >
          {words.splitAdd}
        </Button>
      </div>
      <p role="status" className="strong">
        {right ? words.splitSumRight : words.splitSum(`${number(sum, 1)} %`)}
      </p>
      <Field label={words.splitOn} kind="date" value={on} onChange={setOn} short />
    </Sheet>
  );
}
