import type { BodyOf } from '../../engine/record';
import { bytes, date, number, w } from '../../words';

const words = w.photos;

/** What is known of the file itself. */
export function PhotoFacts({ body }: { readonly body: BodyOf<'photo'> }) {
  const { width, height, taken, focal, focal35 } = body;
  const lines = [
    words.file(body.mime, bytes(body.bytes)),
    ...(width && height ? [words.pixels(width, height, number((width * height) / 1e6, 1))] : []),
    taken ? words.taken(`${date(taken.slice(0, 10))}, ${taken.slice(11, 16)}`) : words.takenUnknown,
    ...(focal35 ? [words.lens35(number(focal35, 0))] : focal ? [words.lens(number(focal, 1))] : []),
    body.placeKept ? words.placeKept : body.gpsBlanked ? words.placeBlanked : words.placeNone,
    words.hash(body.sha256.slice(0, 12)),
  ];
  return (
    <section className="stack tight" aria-label={words.facts}>
      <h3>{words.facts}</h3>
      <ul className="photo-facts">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
