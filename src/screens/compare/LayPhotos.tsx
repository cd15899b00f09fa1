import { useState } from 'react';
import { setPhotoFit } from '../../actions';
import { fewestPairs, type Pair, type PhotoFit, type PhotoFitKind, type Point } from '../../engine/photo';
import type { Reason } from '../../engine/record';
import { w } from '../../words';
import { Button, Choice, Notice, PhotoStage, Section } from '../parts';
import { useDeed, useDesk } from '../shell';
import type { Looked } from './looked';
import { PairList } from './PairList';
import { PairMarks } from './PairMarks';
import { Verdict } from './Verdict';

const words = w.compare;
const kinds: readonly PhotoFitKind[] = ['similarity', 'affine', 'homography'];

interface LayPhotosProps {
  readonly earlier: Looked;
  readonly later: Looked;
  /** From the earlier onto the later, as they are kept. */
  readonly pairs: readonly Pair[];
  readonly kind: PhotoFitKind;
  readonly fit: PhotoFit | undefined;
  readonly refused: readonly Reason[];
  readonly onDone: () => void;
}

/** The end of a pair that is touched, and the one still asked for. */
type HalfPair = Partial<Pair>;

/** The earlier photo laid on the later by touching the same spots on both; each pair is kept as soon as both its ends are there. */
export function LayPhotos({ earlier, later, pairs, kind, fit, refused, onDone }: LayPhotosProps) {
  const desk = useDesk();
  const { run, refused: notKept, busy } = useDeed();
  const [half, setHalf] = useState<HalfPair>({});
  const [chosen, setChosen] = useState<number>();
  const keep = (next: { pairs?: readonly Pair[]; kind?: PhotoFitKind }, done?: () => void) =>
    run(
      () => setPhotoFit(desk, { photo: earlier.row.photo.thing, onto: later.row.photo.thing, kind, pairs, ...next }),
      done,
    );
  const number = chosen === undefined ? pairs.length + 1 : chosen + 1;
  const touched = (end: keyof Pair) => (at: Point) => {
    if (busy) return;
    if (chosen !== undefined) {
      const put = pairs.map((pair, i) => (i === chosen ? { ...pair, [end]: at } : pair));
      keep({ pairs: put });
      return;
    }
    const ends: HalfPair = { ...half, [end]: at };
    const { from, onto } = ends;
    setHalf(ends);
    if (from && onto) keep({ pairs: [...pairs, { from, onto }] }, () => setHalf({}));
  };
  const remove = (i: number) => keep({ pairs: pairs.filter((_, j) => j !== i) }, () => setChosen(undefined));
  const ends = [
    { which: 'earlier', end: 'from', shown: earlier },
    { which: 'later', end: 'onto', shown: later },
  ] as const;
  return (
    <Section
      title={words.lay}
      lead={words.layLead}
      actions={
        <Button kind={fit ? 'main' : 'plain'} onClick={onDone}>
          {words.layDone}
        </Button>
      }
    >
      {notKept && <Notice kind="problem" title={notKept} />}
      <div className="row lay-next">
        <p className="strong grow" role="status">
          {chosen !== undefined ? words.next.chosen(number) : asked(half, number)}
        </p>
        {(half.from || half.onto) && <Button onClick={() => setHalf({})}>{words.forget}</Button>}
      </div>
      <div className="compare-two">
        {ends.map(({ which, end, shown }) => (
          <figure key={which} className="stack tight">
            <figcaption className="strong">{shown.name}</figcaption>
            <PhotoStage
              url={shown.url}
              alt={shown.alt}
              size={shown.size}
              onTouch={touched(end)}
              touchDoes={words.place(number, which)}
            >
              <PairMarks places={pairs.map((pair) => pair[end])} chosen={chosen} next={half[end]} size={shown.size} />
            </PhotoStage>
          </figure>
        ))}
      </div>
      <p>{words.howMany(pairs.length, fewestPairs[kind])}</p>
      {pairs.length > 0 && <Verdict fit={fit} refused={refused} begun />}
      <PairList pairs={pairs} fit={fit} chosen={chosen} onChoose={setChosen} onRemove={remove} />
      {pairs.length > 0 && (
        <Choice
          label={words.kind}
          options={kinds.map((value) => ({ value, label: words.kinds[value], detail: words.kindDetails[value] }))}
          value={kind}
          onChange={(next) => keep({ kind: next })}
        />
      )}
    </Section>
  );
}

const asked = ({ from, onto }: HalfPair, number: number): string => {
  if (from && !onto) return words.next.later(number);
  return onto && !from ? words.next.earlier(number) : words.next.either(number);
};
