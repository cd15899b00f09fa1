import { useState } from 'react';
import { addElevation } from '../../actions';
import { sides } from '../../engine/trade';
import { sayReason, w } from '../../words';
import { AddIcon, Button, CameraIcon, Choice, Field, FileButton, FileIcon, Notice, Sheet } from '../parts';
import { say, useDeed, useDesk, useTyped } from '../shell';

const words = w.sculptures.work;
const pictures = 'image/*';

/** Which side, then the picture: by the device's camera or from a file. */
export function AddElevation({ sculpture }: { readonly sculpture: string }) {
  const desk = useDesk();
  const [open, setOpen] = useState(false);
  const [side, setSide] = useState<string>();
  const [own, setOwn] = useState('');
  const [missing, setMissing] = useState(false);
  const typed = useTyped(['side', undefined, sculpture], { side: [side, setSide], own: [own, setOwn] });
  const { run, refused, busy } = useDeed(typed);
  const close = () => {
    setOpen(false);
    setSide(undefined);
    setOwn('');
    setMissing(false);
  };
  const add = (file: File) => {
    const named = own.trim() || side;
    if (!named) return setMissing(true);
    return run(
      () => addElevation(desk, sculpture, named, file),
      (added) => {
        close();
        const notes = 'notes' in added ? (added.notes as readonly Parameters<typeof sayReason>[0][]) : [];
        say([words.elevationAdded, ...notes.map((note) => sayReason(note))].join(' '));
      },
    );
  };
  return (
    <>
      <div className="row by-hand">
        <Button icon={<AddIcon />} onClick={() => setOpen(true)}>
          {words.elevationAdd}
        </Button>
      </div>
      <Sheet
        open={open}
        title={words.elevationAdd}
        onClose={close}
        actions={
          busy ? (
            <p role="status">{words.elevationKeeping}</p>
          ) : (
            <>
              <FileButton accept={pictures} onFile={add} icon={<FileIcon />} size="round">
                {words.elevationChoose}
              </FileButton>
              <FileButton accept={pictures} onFile={add} camera icon={<CameraIcon />} kind="main" size="round">
                {words.elevationTake}
              </FileButton>
            </>
          )
        }
      >
        {typed.line}
        {refused && <Notice kind="problem" title={refused} />}
        <Choice
          label={words.elevationSide}
          tiles="narrow"
          options={sides.map((value) => ({ value, label: value }))}
          value={own.trim() ? undefined : side}
          onChange={(value) => {
            setSide(value);
            setOwn('');
          }}
          error={missing && !side && !own.trim() ? words.elevationSideMissing : undefined}
        />
        <Field label={words.elevationOwn} value={own} onChange={setOwn} maxLength={100} optional />
      </Sheet>
    </>
  );
}
