import { useLayoutEffect, useState } from 'react';
import { type PhotoExpected, photoExpected, type SculptureRow } from '../../actions';
import { w } from '../../words';
import { LinkButton, Notice } from '../parts';
import { pathTo, useDesk, useHoldUp } from '../shell';

/** The browser was ended behind the camera: where the photo that did not come is asked for again. */
export function PhotoWaits({ rows }: { readonly rows: readonly SculptureRow[] }) {
  const desk = useDesk();
  const [expected, setExpected] = useState<PhotoExpected>();
  const holdUp = useHoldUp();
  useLayoutEffect(() => holdUp(photoExpected(desk).then(setExpected)), [desk, holdUp]);
  const work = rows.find(({ thing }) => thing === expected?.sculpture);
  if (!work) return null;
  return (
    <Notice
      kind="caution"
      title={w.photos.expectedTitle}
      actions={
        <LinkButton to={pathTo.photos(work.thing)}>
          {w.photos.expectedLink(work.body.title || w.sculptures.untitled)}
        </LinkButton>
      }
    />
  );
}
