import type { BodyOf } from '../../engine/record';
import { measureNumber, number, w } from '../../words';

const words = w.photos.viewfinder;

/** How the photos of a station are taken, in one line. */
export function StationFacts({ body }: { readonly body: BodyOf<'station'> }) {
  const said = [
    ...(body.mark ? [words.mark(body.mark)] : []),
    ...(body.distance ? [words.distance(measureNumber('length', body.distance, 1))] : []),
    ...(body.height ? [words.height(measureNumber('length', body.height, 1))] : []),
    ...(body.bearing !== undefined ? [words.bearing(number(body.bearing, 0))] : []),
    ...(body.lens ? [words.lens(number(body.lens, 0))] : []),
    ...(body.format ? [words.format[body.format]] : []),
  ];
  return said.length > 0 ? <p className="station-facts">{said.join('; ')}.</p> : null;
}
