import { photoUrl } from '../../actions';
import { PhotoView } from '../parts';
import { useDesk, useQuestion } from '../shell';

interface SmallPhotoProps {
  readonly photo: string;
  readonly alt: string;
  readonly caption?: string;
}

/** A photo as a small picture. */
export function SmallPhoto({ photo, alt, caption }: SmallPhotoProps) {
  const url = useQuestion(photoUrl(useDesk(), photo, 'thumb'));
  return (
    <div className="small-photo">
      <PhotoView url={url} alt={alt} {...(caption ? { caption } : {})} />
    </div>
  );
}
