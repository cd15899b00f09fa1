import { colourNumbers } from '../../engine/colour';
import { areaMethods } from '../../engine/condition';
import { coverageNumbers, fewestPairs, fitNumbers, obliquities, shareInterval } from '../../engine/photo';
import type { Source } from '../../engine/trade';
import { factSaid, number, share, w, whole } from '../../words';
import { Section } from '../parts';
import { RowsTable } from './RowsTable';
import { Rules } from './Rules';

const words = w.photoMethod;
type Numbers = Readonly<Record<string, { readonly value: number; readonly what: string; readonly source: Source }>>;

function NumbersTable({ caption, numbers }: { readonly caption: string; readonly numbers: Numbers }) {
  return (
    <RowsTable
      caption={caption}
      heads={[words.what, words.value, words.source]}
      figures={[1]}
      rows={Object.entries(numbers).map(([key, { value, what, source }]) => ({
        key,
        cells: [factSaid(what), number(value, 4), factSaid(source.text)],
      }))}
    />
  );
}

/** Dots as they are laid in the field and at the desk, and one step to either side. */
const dotsShown = [25, 49, 100, 200];
const sharesShown = [0.05, 0.2, 0.5];

/** What a share of so many dots is worth, worked out by the same sum. */
function DotsTable() {
  const tenth = (of: number) => `${number(of * 100, 1)} %`;
  return (
    <RowsTable
      caption={words.dotsTell}
      heads={[words.dotsHeads.dots, ...sharesShown.map((seen) => words.dotsSeen(share(seen))), words.dotsHeads.none]}
      figures={[1, 2, 3, 4]}
      rows={dotsShown.map((dots) => ({
        key: String(dots),
        cells: [
          whole(dots),
          ...sharesShown.map((seen) => {
            const [low, high] = shareInterval(Math.round(seen * dots), dots);
            return words.fromTo(tenth(low), tenth(high));
          }),
          words.dotsUpTo(tenth(shareInterval(0, dots)[1])),
        ],
      }))}
    />
  );
}

/** How photos and instruments measure: three ways of coverage, laying photos on one another, areas, colour. */
export function PhotosMeasured() {
  const error = areaMethods.find(({ id }) => id === 'outline')?.error ?? 0;
  return (
    <>
      <Section title={words.coverage}>
        <Rules rules={words.coverageText} />
        <DotsTable />
        <NumbersTable caption={words.numbersOfCoverage} numbers={coverageNumbers} />
      </Section>
      <Section title={words.fits}>
        <Rules
          rules={words.fitsText({
            similarity: whole(fewestPairs.similarity),
            affine: whole(fewestPairs.affine),
            homography: whole(fewestPairs.homography),
          })}
        />
        <NumbersTable caption={words.fitNumbers} numbers={fitNumbers} />
      </Section>
      <Section title={words.areas}>
        <Rules rules={words.areasText(share(error))} />
        <RowsTable
          caption={words.obliquity}
          heads={[words.what, words.value, words.source]}
          figures={[1]}
          rows={obliquities.map(({ id, factor, source }) => ({
            key: id,
            cells: [words.obliquityNames[id], number(factor, 2), factSaid(source.text)],
          }))}
        />
      </Section>
      <Section title={words.colour}>
        <Rules rules={words.colourText} />
        <NumbersTable caption={words.colourNumbers} numbers={colourNumbers} />
      </Section>
    </>
  );
}
