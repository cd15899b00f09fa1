import { useState } from 'react';
import { elevationsOf, photoUrl, removeElevation } from '../../actions';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { Button, LinkButton, Notice, PhotoView, Section, Sheet } from '../parts';
import { pathTo, say, useDeed, useDesk, useQuestion } from '../shell';
import { AddElevation } from './AddElevation';

const words = w.sculptures.work;

/** The sides of the work, as photos or drawings. */
export function Elevations({ sculpture, title }: { readonly sculpture: string; readonly title: string }) {
  const sides = useQuestion(elevationsOf(useDesk(), sculpture));
  return (
    <Section title={words.elevations}>
      {sides?.length === 0 && <p className="soft">{words.elevationsNone}</p>}
      <ul className="sides bare">
        {sides?.map((side) => (
          <li key={side.thing}>
            <Side side={side} title={title} />
          </li>
        ))}
      </ul>
      <AddElevation sculpture={sculpture} />
    </Section>
  );
}

function Side({ side, title }: { readonly side: Thing<'elevation'>; readonly title: string }) {
  const desk = useDesk();
  const [open, setOpen] = useState(false);
  const { run, refused } = useDeed();
  const small = useQuestion(photoUrl(desk, side.body.photo, 'thumb'));
  const name = words.elevationOf(side.body.side);
  return (
    <>
      <button
        type="button"
        className="side"
        aria-label={words.elevationFull(side.body.side)}
        onClick={() => setOpen(true)}
      >
        <PhotoView url={small} alt="" caption={name} />
      </button>
      <Sheet
        open={open}
        title={name}
        onClose={() => setOpen(false)}
        actions={
          <>
            <Button
              kind="danger"
              onClick={() =>
                run(
                  () => removeElevation(desk, side.thing),
                  () => say(words.elevationRemoved),
                )
              }
            >
              {words.elevationRemove}
            </Button>
            <LinkButton to={pathTo.map(side.body.sculpture, side.thing)}>{w.zoneMap.link}</LinkButton>
            <LinkButton to={pathTo.outline(side.body.sculpture, side.thing)}>{w.zoneMap.draw}</LinkButton>
          </>
        }
      >
        {refused && <Notice kind="problem" title={refused} />}
        {open && <Large photo={side.body.photo} alt={`${title}, ${name}`} />}
      </Sheet>
    </>
  );
}

function Large({ photo, alt }: { readonly photo: string; readonly alt: string }) {
  return <PhotoView url={useQuestion(photoUrl(useDesk(), photo, 'whole'))} alt={alt} />;
}
