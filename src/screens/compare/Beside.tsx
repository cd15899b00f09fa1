import { PhotoStage } from '../parts';
import type { Looked } from './looked';

interface BesideProps {
  readonly earlier: Looked;
  readonly later: Looked;
}

/** The two as they were taken. */
export function Beside({ earlier, later }: BesideProps) {
  return (
    <div className="compare-two">
      {[earlier, later].map(({ row, url, alt, size, name }) => (
        <figure key={row.photo.thing} className="stack tight">
          <figcaption className="strong">{name}</figcaption>
          <PhotoStage url={url} alt={alt} size={size} />
        </figure>
      ))}
    </div>
  );
}
