import { photoUrl, setStandHere } from '../../actions';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { CameraIcon, FileButton, FileIcon, Notice, PhotoView } from '../parts';
import { noAnswer, say, useDeed, useDesk, useQuestion } from '../shell';

const words = w.stations.form;
const pictures = 'image/*';

/** The photo that shows where to stand, and a way to take it anew. */
export function StandHere({ station }: { readonly station: Thing<'station'> }) {
  const desk = useDesk();
  const { run, refused, busy } = useDeed();
  const { letter, standHere } = station.body;
  const url = useQuestion<string | null>(standHere ? photoUrl(desk, standHere, 'thumb') : noAnswer);
  const keep = (file: File) =>
    run(
      () => setStandHere(desk, station.thing, file),
      () => say(words.standHereKept),
    );
  return (
    <fieldset className="choice stack tight">
      <legend>{words.standHere}</legend>
      <p className="hint">{words.standHereWhat}</p>
      {refused && <Notice kind="problem" title={refused} />}
      {standHere && (
        <div className="stand-here">
          <PhotoView url={url} alt={words.standHereAlt(letter)} />
        </div>
      )}
      {busy ? (
        <p role="status">{w.round.photo.keeping}</p>
      ) : (
        <div className="row">
          <FileButton accept={pictures} onFile={keep} camera icon={<CameraIcon />}>
            {words.standHereTake}
          </FileButton>
          <FileButton accept={pictures} onFile={keep} icon={<FileIcon />}>
            {words.standHereChoose}
          </FileButton>
        </div>
      )}
    </fieldset>
  );
}
