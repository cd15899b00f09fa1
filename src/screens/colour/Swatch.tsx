import { type Lab, swatchOf } from '../../engine/colour';
import type { BodyOf } from '../../engine/record';
import { w } from '../../words';

const words = w.colour;

export interface Shown {
  readonly value: Lab;
  readonly illuminant: BodyOf<'reading'>['illuminant'];
  /** "the agreed colour", "12 May 2026": read out with it. */
  readonly what: string;
}

/** One colour, drawn. To be recognised, not to be matched. Silent where its name stands beside it. */
export function Swatch({ value, illuminant, what }: Omit<Shown, 'what'> & Partial<Shown>) {
  const colour = <rect width="56" height="56" fill={swatchOf(value, illuminant).hex} />;
  return what === undefined ? (
    <svg className="colour-swatch" viewBox="0 0 56 56" aria-hidden="true">
      {colour}
    </svg>
  ) : (
    <svg className="colour-swatch" viewBox="0 0 56 56" role="img" aria-label={words.swatch(what)}>
      {colour}
    </svg>
  );
}

/** Two colours edge to edge, which is how an eye tells them apart best; a caption under each. */
export function TouchingSwatches({ left, right }: { readonly left: Shown; readonly right: Shown }) {
  const [one, other] = [left, right].map(({ value, illuminant }) => swatchOf(value, illuminant));
  return (
    <figure className="colour-pair">
      <svg viewBox="0 0 240 96" role="img" aria-label={words.pair(left.what, right.what)}>
        <rect width="120.5" height="96" fill={one?.hex} />
        <rect x="120" width="120" height="96" fill={other?.hex} />
      </svg>
      <figcaption className="small soft">
        <span>{left.what}</span>
        <span>{right.what}</span>
      </figcaption>
      {(!one?.exact || !other?.exact) && <p className="small soft">{words.notExact}</p>}
    </figure>
  );
}
