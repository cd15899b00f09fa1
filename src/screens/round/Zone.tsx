import { type MouseEvent, memo, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { leaveZone, noteZone, photoForZone, touchZone, type ZoneView, zoneView } from '../../actions';
import type { Leaving, Reason, ZoneTouch } from '../../engine/record';
import { midSentence, sayReason, w } from '../../words';
import { LinkButton, Notice, Reading } from '../parts';
import { pathTo, say, useDesk, useQuestion } from '../shell';
import { AnswerBar } from './AnswerBar';
import { called } from './called';
import { Elevation } from './Elevation';
import { PadContext } from './PadContext';
import { focusAsked, usePadKeys } from './padKeys';
import { ReadBack } from './ReadBack';
import { RoundMissing } from './RoundMissing';
import { UndoButton } from './UndoButton';
import { cautionsShown, ZoneCautions } from './ZoneCautions';
import { ZoneNotices } from './ZoneNotices';
import { ZonePad } from './ZonePad';
import './round.css';
import './zone.css';

interface ZoneScreenProps {
  readonly round: string;
  readonly zone: string;
}

/** One zone of a round. */
export function ZoneScreen({ round, zone }: ZoneScreenProps) {
  const desk = useDesk();
  const view = useQuestion(zoneView(desk, round, zone));
  const leaving = useRef(false);
  const left = useRef<string>(undefined);
  const shown = useRef(view);
  // A zone that is being left is not drawn once more before the next one comes up: a slow tablet would show it late.
  if (!leaving.current) shown.current = view;
  if (shown.current === undefined) return <Reading />;
  if (shown.current === null) return <RoundMissing />;
  return <OpenZone view={shown.current} leaving={leaving} left={left} />;
}

/** A second tap this soon after a zone came up belongs to the one before: it must not answer for this one. Milliseconds. */
const strayTap = 400;

interface OpenZoneProps {
  readonly view: ZoneView;
  readonly leaving: { current: boolean };
  /** What was called on leaving the zone before. */
  readonly left: { current: string | undefined };
}

const OpenZone = memo(function OpenZone({ view, leaving: isLeaving, left: leftWith }: OpenZoneProps) {
  const desk = useDesk();
  const [, go] = useLocation();
  const [refused, setRefused] = useState<Reason>();
  const [keepingPhoto, setKeepingPhoto] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  const padBegin = useRef<HTMLDivElement>(null);
  const cameUp = useRef(0);
  const round = view.round.thing;
  const zone = view.zone.thing;
  const { letter, name } = view.zone.body;

  // Before it is drawn: a zone that jumped to its top afterwards would be touched beside.
  useLayoutEffect(() => {
    if (zone) document.documentElement.scrollTop = 0;
  }, [zone]);
  useEffect(() => {
    cameUp.current = performance.now();
    heading.current?.focus({ preventScroll: true });
    void noteZone(desk, round, zone);
  }, [desk, round, zone]);
  useEffect(() => {
    document.title = `${w.round.zone.title(letter, name)} · ${w.product}`;
  }, [letter, name]);

  const careful = cautionsShown(view);
  const { what } = view.asks;
  const asking = what !== 'rows' && what !== 'card';
  const finding = 'finding' in view.asks ? view.asks.finding.key : '';
  useLayoutEffect(() => {
    // A new question begins where the eye is; the pad may have been scrolled for the last one.
    const pad = padBegin.current;
    if (asking && finding !== undefined && pad && pad.getBoundingClientRect().top < 0) pad.scrollIntoView();
  }, [asking, finding]);
  const asked = `${what} ${finding}`;
  useEffect(() => {
    if (asked && padBegin.current) focusAsked(padBegin.current);
  }, [asked]);

  const touch = async (said: ZoneTouch): Promise<boolean> => {
    const outcome = await touchZone(desk, round, zone, said);
    setRefused(outcome.ok ? undefined : outcome.reason);
    return outcome.ok;
  };
  usePadKeys(asking ? () => void touch({ do: 'close' }) : undefined);
  const leave = async (leaving: Leaving) => {
    isLeaving.current = true;
    const outcome = await leaveZone(desk, round, zone, leaving);
    isLeaving.current = outcome.ok;
    if (!outcome.ok) return setRefused(outcome.reason);
    leftWith.current =
      leaving.how === 'next' ? called(view) : w.callAndTap.kept(letter, w.round.walk.standing[outcome.state]);
    say(w.round.zone.kept(letter, w.round.walk.standing[outcome.state]));
    go(outcome.next ? pathTo.zoneInRound(round, outcome.next) : pathTo.endRound(round));
  };
  const keepPhoto = async (of: string, file: File) => {
    setKeepingPhoto(true);
    const outcome = await photoForZone(desk, round, zone, of, file);
    setKeepingPhoto(false);
    setRefused(outcome.ok ? undefined : outcome.reason);
    if (outcome.ok) say(w.round.photo.kept);
  };
  const stray = (e: MouseEvent) => {
    if (e.detail > 1 && performance.now() - cameUp.current < strayTap) {
      e.stopPropagation();
      e.preventDefault();
    }
  };

  const pad = {
    view,
    touch: (said: ZoneTouch) => void touch(said),
    leave: (leaving: Leaving) => void leave(leaving),
    expectPhoto: (of: string) => touch({ do: 'photo expected', of }),
    keepPhoto: (of: string, file: File) => void keepPhoto(of, file),
    keepingPhoto,
  };
  const left = w.round.walk.left(view.zones - view.answered);
  return (
    <PadContext value={pad}>
      <div className={`zone-screen ${asking ? 'asking' : ''} ${careful ? 'careful' : ''}`} onClickCapture={stray}>
        <header className="zone-head by-hand">
          <p className="zone-letter" aria-hidden="true">
            {letter}
          </p>
          <div className="zone-title">
            <h1 ref={heading} tabIndex={-1} aria-label={w.round.zone.title(letter, name)}>
              {name}
            </h1>
            <p className="soft">
              {w.round.zone.of(view.position, view.zones)}, {midSentence(left)}.
            </p>
          </div>
          <LinkButton to={pathTo.round(round)} size="round" label={w.round.zone.listOf(left)}>
            {w.round.zone.list}
          </LinkButton>
          <UndoButton round={round} undo={view.undo} zone={zone} />
        </header>
        <div className="zone-over">
          <Elevation sculpture={view.sculpture.thing} zone={zone} elevations={view.elevations} />
          {careful && <ZoneCautions view={view} />}
          <ReadBack view={view} left={leftWith.current} />
        </div>
        <div className="zone-pad" ref={padBegin}>
          {view.draft.already && view.draft.touches === 0 && (
            <p className="strong">{w.round.zone.already[view.draft.already]}</p>
          )}
          {view.round.body.fromPaper && <p className="soft">{w.paperCards.entering}</p>}
          <ZoneNotices />
          <ZonePad />
        </div>
        <div className="zone-foot">
          {refused && <Notice kind="problem" title={sayReason(refused)} />}
          <AnswerBar
            onPass={() => go(view.next ? pathTo.zoneInRound(round, view.next.thing) : pathTo.endRound(round))}
          />
        </div>
      </div>
    </PadContext>
  );
});
