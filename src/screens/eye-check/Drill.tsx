import {
  type EyeCheckUnderWay,
  eyeCheckUnderWay,
  patchesInCheck,
  type SurveyorRow,
  sayPatch,
  takeBackPatch,
} from '../../actions';
import type { LadderStep } from '../../engine/trade';
import { w } from '../../words';
import { Button, Notice, Page, Reading } from '../parts';
import { CoverageLadder } from '../parts/CoverageLadder';
import { say, useDeed, useDesk, useQuestion } from '../shell';
import { PatchPicture } from './PatchPicture';
import { useDrawnPatch } from './useDrawnPatch';

const words = w.eyeCheck;

interface DrillProps {
  readonly person: SurveyorRow;
  readonly onStop: () => void;
}

/** A screen of its own while it goes on: one patch after another. */
export function Drill({ person, onStop }: DrillProps) {
  const at = useQuestion(eyeCheckUnderWay(useDesk(), person.thing));
  if (!at) return <Reading />;
  return (
    <Page title={words.patch(at.patches.length + 1, patchesInCheck)} over={`${words.title} · ${person.role}`}>
      <OnePatch surveyor={person.thing} at={at} onStop={onStop} />
    </Page>
  );
}

interface OnePatchProps {
  readonly surveyor: string;
  readonly at: EyeCheckUnderWay;
  readonly onStop: () => void;
}

/** Judged on the ladder of the rounds. What is true is not told before the end. */
function OnePatch({ surveyor, at, onStop }: OnePatchProps) {
  const desk = useDesk();
  const { run, refused, busy } = useDeed();
  const index = at.patches.length;
  const patch = useDrawnPatch(at.seed, index, patchesInCheck);
  const judge = ({ value, low, high }: LadderStep) => {
    if (!patch || busy) return;
    const said = { value, low, high, method: 'ladder' as const };
    void run(
      () => sayPatch(desk, surveyor, { truth: patch.truth, said }),
      ({ made }) => {
        if (!made) return say(words.patch(index + 2, patchesInCheck));
        say(words.made);
        onStop();
      },
    );
  };
  return (
    <section className="eye-drill" aria-label={words.patch(index + 1, patchesInCheck)}>
      <div className="eye-drill-see">
        <progress className="eye-progress" value={index} max={patchesInCheck} aria-hidden="true" />
        <PatchPicture patch={patch} label={patch ? words.patchPicture : words.drawing} />
      </div>
      <div className="eye-drill-say">
        <p className="pad-group-label">{words.ask}</p>
        <CoverageLadder label={words.ask} withoutNone onStep={judge} />
        <div className="row by-hand">
          <Button
            size="round"
            disabled={index === 0 || busy}
            onClick={() => void run(() => takeBackPatch(desk, surveyor))}
          >
            {words.back}
          </Button>
          <Button size="round" onClick={onStop}>
            {words.stop}
          </Button>
        </div>
        <p className="soft small">{words.askWhat}</p>
        {refused && <Notice kind="problem" title={refused} />}
      </div>
    </section>
  );
}
