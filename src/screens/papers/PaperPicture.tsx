import { photoUrl } from '../../actions';
import { w } from '../../words';
import { useDesk, useQuestion } from '../shell';

/** A picture of a paper from this device; where its bytes are kept elsewhere the paper says so. */
export function PaperPicture({ sha256, alt }: { readonly sha256: string; readonly alt: string }) {
  const url = useQuestion(photoUrl(useDesk(), `photo/${sha256}`, 'whole'));
  if (!url) return <span className="paper-no-picture">{url === null ? w.paperLayout.notHere : w.parts.reading}</span>;
  return <img src={url} alt={alt} />;
}
