import { type EyeKnown, eyeNumbers, likelyTrue, saidAt } from '../../engine/eye';
import { ladderStepOf } from '../../engine/trade';
import { number, share, w, whole } from '../../words';
import { Notice, Section } from '../parts';

const words = w.eyeCheck;
const told = [0.05, 0.2, 0.5];
/** The sign stays with its number at the end of a line. */
const percent = (p: number): string => (p < 0.1 ? `${number(p * 100, 1)} %` : share(p)).replace(' %', '\u00a0%');
const assumed = eyeNumbers.assumedSd.value;

const onStep = (value: number) => {
  const { low, high } = ladderStepOf(value);
  return { value, low, high, method: 'ladder' as const };
};

const likely = (said: number, sd: number, eye?: EyeKnown): string => {
  const { value, low, high } = likelyTrue(onStep(said), sd, eye?.curve ?? undefined);
  return eye?.curve?.shown
    ? words.likelyBeside(percent(said), percent(value), percent(low), percent(high))
    : words.likely(percent(said), percent(low), percent(high));
};

/** Over or under the assumed spread by more than a tenth of it is told as wider or steadier. */
const steadiness = (sd: number): string =>
  sd > assumed * 1.1 ? words.steady.wider : sd < assumed * 0.9 ? words.steady.steadier : words.steady.usual;

const lean = ({ curve }: EyeKnown): string => {
  if (!curve) return words.lean.noCurve;
  if (!curve.shown) return words.lean.none;
  const truth = 0.1;
  return words.lean.shown(percent(truth), percent(saidAt(curve, truth).value));
};

/** One eye in plain words: what its answers stand for, whether it leans, what of it is used, and what it all rests on. */
export function WhatIsKnown({
  who,
  eye,
  checks,
}: {
  readonly who: string;
  readonly eye: EyeKnown | undefined;
  readonly checks: number;
}) {
  if (!eye) {
    const { low, high } = likelyTrue(onStep(0.2), assumed);
    return (
      <Section title={words.known(who)}>
        <Notice title={words.notKnown}>
          <p>{words.notKnownWhat(percent(0.2), percent(low), percent(high))}</p>
        </Notice>
      </Section>
    );
  }
  return (
    <Section title={words.known(who)} lead={words.notASchoolMark}>
      <ul className="eye-likely">
        {told.map((said) => (
          <li key={said}>{likely(said, eye.sd, eye)}</li>
        ))}
      </ul>
      <p>{steadiness(eye.sd)}</p>
      <p>{lean(eye)}</p>
      <h3>{words.used}</h3>
      <p>{words.usedSpread(number(eye.sd, 2), number(assumed, 2))}</p>
      {eye.curve?.shown && <p>{words.usedLean}</p>}
      <h3>{words.restsOn}</h3>
      <dl className="eye-rests">
        <Rests name={words.rests.checks} value={whole(checks)} />
        <Rests name={words.rests.patches} value={whole(eye.patches)} />
        <Rests name={words.rests.pairs} value={whole(eye.pairs)} />
        <Rests name={words.rests.worth} value={number(eye.worth, 1)} />
        {eye.seen !== null && <Rests name={words.rests.seen} value={number(eye.seen, 2)} />}
        <Rests name={words.rests.own} value={number(eye.own, 2)} />
        <Rests name={words.rests.used} value={number(eye.sd, 2)} />
      </dl>
      <p className="soft">{words.notTheBronze}</p>
    </Section>
  );
}

function Rests({ name, value }: { readonly name: string; readonly value: string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd className="figures">{value}</dd>
    </div>
  );
}
