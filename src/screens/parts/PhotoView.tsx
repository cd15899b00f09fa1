import { w } from '../../words';
import './photoView.css';

interface PhotoViewProps {
  /** Undefined while it is read; null where the bytes are not on this device. */
  readonly url: string | null | undefined;
  readonly alt: string;
  readonly caption?: string;
}

/** A photo with its caption. Bytes kept elsewhere are a normal state, and said. */
export function PhotoView({ url, alt, caption }: PhotoViewProps) {
  return (
    <figure className="photo">
      {url ? (
        <img src={url} alt={alt} decoding="async" />
      ) : (
        <div className="photo-away">{url === null ? w.parts.photoElsewhere : w.parts.reading}</div>
      )}
      {caption && <figcaption>{caption}</figcaption>}
    </figure>
  );
}
