import { useState } from 'react';
import { judgeDot, layDots, type MeasureAtHand, type MeasureOf, takeBackDot } from '../../actions';
import { dotsCoverage, dotsIn, isRefused, type Outline, type Size } from '../../engine/photo';
import { w } from '../../words';
import { Button, Choice, Notice } from '../parts';
import { Reasons } from '../parts/Reasons';
import { say, useDeed, useDesk } from '../shell';
import { AllJudged } from './AllJudged';
import { DotJudge } from './DotJudge';
import { isGreen, subjectOf } from './subject';

const words = w.measure;

interface DotsToolProps {
  readonly of: MeasureOf;
  readonly hand: MeasureAtHand;
  /** Where new dots are laid; those that lie are judged in the part they were laid in. */
  readonly part: Outline;
  readonly size: Size;
  readonly urls: { readonly whole: string; readonly thumb: string };
  /** Width of the largest patch traced here, share of the photo's width; 0 where none was. */
  readonly largestPatch: number;
  readonly onStop: () => void;
}

/** Dots spread over the part, judged one by one. All of them judged, the figure is kept. */
export function DotsTool({ of, hand, part, size, urls, largestPatch, onStop }: DotsToolProps) {
  const desk = useDesk();
  const [anew, setAnew] = useState(false);
  const { run, refused } = useDeed();
  const { draft } = hand;
  const answers = draft?.working.answers;
  if (!draft || answers === undefined || anew)
    return (
      <LayDots
        of={of}
        part={part}
        size={size}
        before={answers !== undefined}
        largestPatch={largestPatch}
        onLaid={() => setAnew(false)}
        onStop={onStop}
      />
    );
  const { dots, spacing } = dotsIn(draft.part, size, answers.length, draft.working.seed ?? 0);
  const take = (dot: number) => void run(() => takeBackDot(desk, of, 'answers', dot));
  if (answers.includes('-'))
    return (
      <>
        {refused && <Notice kind="problem" title={refused} />}
        <DotJudge
          urls={urls}
          size={size}
          part={draft.part}
          dots={dots.map((at, i) => ({ at, answer: answers.charAt(i) }))}
          spacing={spacing}
          green={isGreen(of.kind)}
          what={subjectOf(of.kind)}
          onAnswer={(dot, answer) =>
            void run(
              () => judgeDot(desk, of, 'answers', dot, answer),
              ({ kept }) => kept && say(words.kept),
            )
          }
          onBack={take}
          onStop={onStop}
        />
        <div className="row by-hand">
          <Button kind="quiet" onClick={() => setAnew(true)}>
            {words.dotsAnew}
          </Button>
        </div>
      </>
    );
  const told = dotsCoverage(answers, draft.part, size, largestPatch);
  return (
    <AllJudged of={of} hand={hand} told={told} refused={refused} onStop={onStop}>
      <Button size="round" onClick={() => take(answers.length - 1)}>
        {words.dotBack}
      </Button>
      <Button size="round" onClick={() => setAnew(true)}>
        {words.dotsAnew}
      </Button>
    </AllJudged>
  );
}

interface LayDotsProps {
  readonly of: MeasureOf;
  readonly part: Outline;
  readonly size: Size;
  /** Dots were laid before, and are forgotten. */
  readonly before: boolean;
  readonly largestPatch: number;
  readonly onLaid: () => void;
  readonly onStop: () => void;
}

const counts = ['49', '100'] as const;

function LayDots({ of, part, size, before, largestPatch, onLaid, onStop }: LayDotsProps) {
  const desk = useDesk();
  const [many, setMany] = useState<(typeof counts)[number]>('49');
  const { run, refused, busy } = useDeed();
  // Whatever the answers will be: a part too small, or dots too close, is said before the first one.
  const can = dotsCoverage('n'.repeat(Number(many)), part, size, largestPatch);
  const close = isRefused(can) ? [] : can.reasons.filter(({ code }) => code === 'coverage: dots closer than a patch');
  return (
    <div className="stack measure-lay">
      <p className="page-lead">{words.dotsLead}</p>
      {before && <p className="soft">{words.dotsAnewWhat}</p>}
      {refused && <Notice kind="problem" title={refused} />}
      <Choice
        label={words.howMany}
        size="round"
        options={counts.map((value) => ({ value, label: words.dotsCount[value], detail: words.dotsFor[value] }))}
        value={many}
        onChange={setMany}
      />
      {isRefused(can) && (
        <Notice kind="caution" title={words.noFigure}>
          <Reasons reasons={can.refused} />
        </Notice>
      )}
      <Reasons reasons={close} />
      <div className="row by-hand">
        <Button size="round" onClick={before ? onLaid : onStop}>
          {words.stop}
        </Button>
        <Button
          size="big"
          kind="main"
          disabled={busy || isRefused(can)}
          onClick={() => void run(() => layDots(desk, of, part, Number(many)), onLaid)}
        >
          {words.dotsLay}
        </Button>
      </div>
    </div>
  );
}
