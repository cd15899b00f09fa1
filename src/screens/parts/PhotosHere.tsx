import { useEffect, useRef, useState, useSyncExternalStore } from 'react';
import { type Desk, expectPhoto, keepPhoto, noPhotoExpected, type PhotoRole, photoUrl } from '../../actions';
import { sayReason, w } from '../../words';
import { Button } from './Button';
import { CrossIcon } from './icons';
import { Notice } from './Notice';
import { PhotoTake } from './PhotoTake';
import { PhotoView } from './PhotoView';
import './photosHere.css';

const words = w.parts.photosHere;

interface PhotosHereProps {
  readonly desk: Desk;
  readonly sculpture: string;
  readonly zone?: string | undefined;
  readonly as: PhotoRole;
  /** What they show, for eyes and ears: "lens L2, after". Two on one screen are told apart by it. */
  readonly label: string;
  /** Names of photos. */
  readonly photos: readonly string[];
  /** A photo is in the store, read back, before this is called. Left out: they are only shown. */
  readonly onChange?: ((photos: readonly string[]) => void) | undefined;
  /** As many as there is room for; no camera once they are there. */
  readonly most?: number;
  readonly error?: string | undefined;
}

/** Photos that belong to something said: taken or chosen here, shown in small, taken off again. Off this list a photo stays with its work. */
export function PhotosHere(props: PhotosHereProps) {
  const { desk, sculpture, zone, as, label, photos, onChange, most = Number.POSITIVE_INFINITY, error } = props;
  const [busy, setBusy] = useState(false);
  const [wrong, setWrong] = useState<string>();
  // A photo takes a moment to be kept, and the form is written on meanwhile: it is added to the form as it is by then.
  const latest = useRef({ photos, onChange });
  useEffect(() => {
    latest.current = { photos, onChange };
  });
  const keep = async (file: File) => {
    setBusy(true);
    const kept = await keepPhoto(desk, sculpture, file, as, zone ? { zone } : {});
    setBusy(false);
    setWrong(kept.ok ? undefined : sayReason(kept.reason));
    if (!kept.ok) return;
    await noPhotoExpected(desk).catch(() => undefined);
    const now = latest.current;
    if (!now.photos.includes(kept.photo)) now.onChange?.([...now.photos, kept.photo]);
  };
  const expect = () =>
    expectPhoto(desk, { sculpture, zone }).then(
      () => true,
      () => false,
    );
  return (
    <fieldset className="photos-here stack tight">
      <legend>{label}</legend>
      {wrong && <Notice kind="problem" title={wrong} />}
      {photos.length > 0 && (
        <ul className="bare photos-here-list">
          {photos.map((photo, i) => (
            <li key={photo}>
              <Small desk={desk} photo={photo} alt={words.alt(label, i + 1)} />
              {onChange && (
                <span className="not-printed">
                  <Button
                    kind="quiet"
                    icon={<CrossIcon />}
                    aria-label={words.offOf(label, i + 1)}
                    onClick={() => onChange(photos.filter((each) => each !== photo))}
                  >
                    {words.off}
                  </Button>
                </span>
              )}
            </li>
          ))}
        </ul>
      )}
      {busy && <p role="status">{w.round.photo.keeping}</p>}
      {!busy && onChange && photos.length < most && (
        <div className="row not-printed">
          <PhotoTake what={label} size="usual" expect={expect} keep={(file) => void keep(file)} />
        </div>
      )}
      {error && <p className="field-error">{error}</p>}
    </fieldset>
  );
}

function Small({ desk, photo, alt }: { readonly desk: Desk; readonly photo: string; readonly alt: string }) {
  const question = photoUrl(desk, photo, 'thumb');
  return <PhotoView url={useSyncExternalStore(question.subscribe, question.get)} alt={alt} />;
}
