import { removeEyeCheck } from '../../actions';
import type { Thing } from '../../engine/record';
import { ladderStepOf } from '../../engine/trade';
import { date, w } from '../../words';
import { Button, Notice, Section } from '../parts';
import { say, useDeed, useDesk } from '../shell';

const words = w.eyeCheck;

/** Each check with what it said, newest first; one that should not count can be removed. */
export function EarlierChecks({
  checks,
  fixed,
}: {
  readonly checks: readonly Thing<'eyeCheck'>[];
  readonly fixed: boolean;
}) {
  const desk = useDesk();
  const { run, refused, busy } = useDeed();
  if (checks.length === 0) return null;
  return (
    <Section title={words.checks}>
      {refused && <Notice kind="problem" title={refused} />}
      <ul className="bare stack">
        {checks.toReversed().map(({ thing, body }) => {
          const off = body.patches.map(({ truth, said }) => Math.sign(said.value - ladderStepOf(truth).value));
          const count = (way: number) => off.filter((one) => one === way).length;
          return (
            <li key={thing} className="row">
              <div className="grow">
                <p className="strong">{words.checkOf(date(body.date))}</p>
                <p className="soft">{words.checkMeans(body.patches.length, count(1), count(-1))}</p>
              </div>
              {!fixed && (
                <Button
                  kind="quiet"
                  disabled={busy}
                  aria-label={words.remove(date(body.date))}
                  onClick={() =>
                    void run(
                      () => removeEyeCheck(desk, thing),
                      () => say(words.removed),
                    )
                  }
                >
                  {words.removeShort}
                </Button>
              )}
            </li>
          );
        })}
      </ul>
    </Section>
  );
}
