import { pixelsUnderWay } from '../../actions';
import { useDesk } from './DeskContext';
import { useQuestion } from './useQuestion';
import './underWay.css';

/** How far the work on the pixels of a photo is, beside the page. `says` what is being done. Leaving the screen leaves it off. */
export function PixelsUnderWay({ says }: { readonly says: string }) {
  const at = useQuestion(pixelsUnderWay(useDesk()));
  return (
    <div className="stack tight under-way not-printed" role="status">
      <p>{says}</p>
      <progress aria-label={says} {...(at ? { value: at.done, max: 1 } : {})} />
    </div>
  );
}
