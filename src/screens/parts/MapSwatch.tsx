import { useId } from 'react';
import { type Hatch, hatches, type Mark } from '../../engine/photo';
import './mapSwatch.css';

/** In pixels of the drawing over a photo, which is mostly shown smaller than it is. */
const width = 84;
const height = 60;

/** A swatch of what a picture of pixels marks, in the hatch that lies over the photo. The word stands beside it. */
export function MapSwatch({ of }: { readonly of: Mark }) {
  const id = useId();
  const hatch = hatches[of];
  return (
    <svg className="map-swatch" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      <clipPath id={id}>
        <rect width={width} height={height} rx="8" />
      </clipPath>
      <g clipPath={`url(#${id})`}>
        <rect className="map-ground" width={width} height={height} />
        <Ink hatch={hatch} />
      </g>
      {hatch.edged && <rect className="map-edge-pale" x="5" y="5" width={width - 10} height={height - 10} rx="4" />}
      <rect className="map-edge" x="1.5" y="1.5" width={width - 3} height={height - 3} rx="7" />
    </svg>
  );
}

function Ink({ hatch }: { readonly hatch: Hatch }) {
  const { ink, lines } = hatch;
  if (lines === 'dots')
    return dotsOf(hatch).map(([x, y]) => <circle key={`${x} ${y}`} className="map-dot" cx={x} cy={y} r={ink + 0.5} />);
  const d = { rising: risingOf, falling: fallingOf, crossed: crossedOf, dashes: dashesOf }[lines](hatch);
  return (
    <>
      <path className="map-casing" d={d} strokeWidth={ink + 2} />
      <path className="map-line" d={d} strokeWidth={ink} />
    </>
  );
}

const upTo = (end: number, step: number): number[] =>
  Array.from({ length: Math.ceil(end / step) + 1 }, (_, i) => i * step);

const risingOf = ({ apart }: Hatch): string =>
  upTo(width + height, apart)
    .map((k) => `M${k} 0L0 ${k}`)
    .join('');

const fallingOf = ({ apart }: Hatch): string =>
  upTo(width + height, apart)
    .map((k) => `M${k - height} 0l${width} ${width}`)
    .join('');

const crossedOf = (hatch: Hatch): string => risingOf(hatch) + fallingOf(hatch);

const dashesOf = ({ apart }: Hatch): string =>
  upTo(height, apart)
    .flatMap((y, row) =>
      upTo(width, apart).map((x) => `M${x + (row % 2 ? apart / 2 : 0)} ${y + apart / 3}h${apart / 3}`),
    )
    .join('');

const dotsOf = ({ apart }: Hatch): (readonly [number, number])[] =>
  upTo(height, apart).flatMap((y, row) =>
    upTo(width, apart).map((x) => [x + (row % 2 ? 0 : apart / 2), y + apart / 2] as const),
  );
