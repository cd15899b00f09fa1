import { useState } from 'react';
import type { DotAnswer } from '../../actions';
import type { Outline, Point, Size } from '../../engine/photo';
import { w } from '../../words';
import { Button } from '../parts';
import { CloseUp, Whole } from './DotPictures';
import { OutlineMarks, SpotMark } from './Marks';

const words = w.measure;

/** A dot and what was said of it; '-' where nothing yet. */
export interface Dot {
  readonly at: Point;
  readonly answer: string;
}

interface DotJudgeProps {
  readonly urls: { readonly whole: string; readonly thumb: string };
  readonly size: Size;
  readonly part: Outline;
  readonly dots: readonly Dot[];
  /** Distance of neighbouring dots, share of the photo's width: the close-up shows a few of it. */
  readonly spacing: number;
  readonly green: boolean;
  /** What is asked for, within a sentence. */
  readonly what: string;
  /** Check dots are named so. */
  readonly check?: true;
  readonly onAnswer: (dot: number, answer: DotAnswer) => void;
  readonly onBack: (dot: number) => void;
  readonly onStop: () => void;
}

/** How much of the photo the close-up shows, in distances of dots, and the least in pixels. */
const shown = { spacings: 2.5, pixels: 90 } as const;
const widths = [0.4, 1, 2.5] as const;

/** One dot after the other, one touch each. What was said before is not drawn in the close-up, so that it cannot lead the eye. */
export function DotJudge({
  urls,
  size,
  part,
  dots,
  spacing,
  green,
  what,
  check,
  onAnswer,
  onBack,
  onStop,
}: DotJudgeProps) {
  const [step, setStep] = useState(1);
  const now = dots.findIndex(({ answer }) => answer === '-');
  const dot = dots[now];
  if (!dot) return null;
  const wide = Math.min(0.8, Math.max(spacing * shown.spacings, shown.pixels / size.width) * (widths[step] as number));
  const answers = words.answer[green ? 'green' : 'other'];
  return (
    <section className="dot-judge" aria-label={(check ? words.checkDot : words.dot)(now + 1, dots.length)}>
      <div className="dot-see">
        <CloseUp url={urls.whole} label={words.dotCloseUp(now + 1)} size={size} at={dot.at} wide={wide} />
        <Whole url={urls.thumb} label={words.dotWhole} size={size}>
          <OutlineMarks outline={part} size={size} as="part" />
          {dots.map(({ at, answer }, i) => (
            <SpotMark
              // biome-ignore lint/suspicious/noArrayIndexKey: a dot is its place in the count and nothing else
              key={i}
              at={at}
              size={size}
              as={answer === '-' ? 'open' : check ? 'sound' : (answer as DotAnswer)}
            />
          ))}
          <SpotMark at={dot.at} size={size} as="now" />
        </Whole>
      </div>
      <div className="dot-say stack">
        <progress className="dot-progress" value={now} max={dots.length} aria-hidden="true" />
        <p className="strong">{words.ask(what)}</p>
        <div className="dot-answers">
          {(['y', 'n', 'g'] as const).map((answer) => (
            <Button key={answer} size="big" wide onClick={() => onAnswer(now, answer)}>
              {answers[answer]}
            </Button>
          ))}
        </div>
        <div className="row by-hand">
          <Button size="round" disabled={now === 0} onClick={() => onBack(now - 1)}>
            {words.dotBack}
          </Button>
          <Button size="round" disabled={step === 0} onClick={() => setStep(step - 1)}>
            {words.closer}
          </Button>
          <Button size="round" disabled={step === widths.length - 1} onClick={() => setStep(step + 1)}>
            {words.wider}
          </Button>
          <Button size="round" onClick={onStop}>
            {words.stop}
          </Button>
        </div>
        <p className="soft small figures">{words.progress(now, dots.length)}</p>
      </div>
    </section>
  );
}
