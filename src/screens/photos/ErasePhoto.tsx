import { useState } from 'react';
import { erasePhoto } from '../../actions';
import { w } from '../../words';
import { Button } from '../parts';
import { EraseForGood } from '../parts/EraseForGood';
import { say, useDeed, useDesk } from '../shell';

const words = w.erasing;

/** The way to erase a photo, for a bystander's sake, at the end of what is said of it. */
export function ErasePhoto({ photo, done }: { readonly photo: string; readonly done: () => void }) {
  const desk = useDesk();
  const [open, setOpen] = useState(false);
  const { run, refused, busy } = useDeed();
  const erase = (reason: string) =>
    run(
      () => erasePhoto(desk, photo, { reason }),
      () => {
        say(words.done);
        done();
      },
    );
  return (
    <>
      <div className="row">
        <Button kind="quiet" onClick={() => setOpen(true)}>
          {words.photoOpen}
        </Button>
      </div>
      {open && (
        <EraseForGood title={words.photo} onClose={() => setOpen(false)} onErase={erase} refused={refused} busy={busy}>
          <p>{words.photoGoes}</p>
          <p>{words.photoStays}</p>
          <p className="soft">{words.photoRemoveInstead}</p>
        </EraseForGood>
      )}
    </>
  );
}
