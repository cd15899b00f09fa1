import { type PhotoOfWork, type PhotosOfWork, photoUrl, removePhoto } from '../../actions';
import { date, w } from '../../words';
import { Button, LinkButton, Notice, PhotoView, Sheet } from '../parts';
import { PhotoAway, pathTo, say, useDeed, useDesk, useQuestion } from '../shell';
import { ErasePhoto } from './ErasePhoto';
import { PhotoFacts } from './PhotoFacts';
import { shownOn } from './placeNames';
import { SortPhoto } from './SortPhoto';

const words = w.photos;

interface PhotoSheetProps {
  readonly work: PhotosOfWork;
  readonly row: PhotoOfWork;
  readonly close: () => void;
}

/** One photo, where it belongs, what its file says of itself, and what can be done with it. */
export function PhotoSheet({ work, row, close }: PhotoSheetProps) {
  const desk = useDesk();
  const { run, refused } = useDeed();
  const { thing, body } = row.photo;
  const what = shownOn(work, row);
  const about = body.sentinel ?? row.zone;
  const remove = () =>
    run(
      () => removePhoto(desk, thing),
      () => {
        say(words.removed);
        close();
      },
    );
  return (
    <Sheet
      open
      title={what}
      onClose={close}
      actions={
        <Button kind="danger" onClick={remove}>
          {words.remove}
        </Button>
      }
    >
      {refused && <Notice kind="problem" title={refused} />}
      {body.flaw && <Notice kind="caution" title={words.flawWhat[body.flaw]} />}
      {(!body.flaw || body.flaw === 'cut short') && <Whole photo={thing} alt={words.alt(what, date(row.day))} />}
      <PhotoAway photo={thing} />
      <div className="row">
        {about && <LinkButton to={pathTo.measure(thing, about)}>{words.measure}</LinkButton>}
        {body.station && <LinkButton to={pathTo.compare(body.sculpture)}>{words.compare}</LinkButton>}
      </div>
      <SortPhoto work={work} row={row} />
      <PhotoFacts body={body} />
      <ErasePhoto photo={thing} done={close} />
    </Sheet>
  );
}

function Whole({ photo, alt }: { readonly photo: string; readonly alt: string }) {
  return <PhotoView url={useQuestion(photoUrl(useDesk(), photo, 'whole'))} alt={alt} />;
}
