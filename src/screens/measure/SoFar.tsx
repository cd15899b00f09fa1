import { isRefused, type Measurement } from '../../engine/photo';
import { w } from '../../words';
import { FigureText, Notice } from '../parts';
import { Reasons } from '../parts/Reasons';

const words = w.measure;

/** What the touches come to, with its range and what it rests on; or why nothing can be told. */
export function SoFar({ told, title = words.soFar }: { readonly told: Measurement; readonly title?: string }) {
  if (isRefused(told))
    return (
      <Notice kind="caution" title={words.noFigure}>
        <Reasons reasons={told.refused} />
      </Notice>
    );
  return (
    <div className="measure-so-far stack tight" role="status">
      <p>
        {title}: <FigureText figure={told} as="share" large />
      </p>
      <Reasons reasons={told.reasons} />
    </div>
  );
}
