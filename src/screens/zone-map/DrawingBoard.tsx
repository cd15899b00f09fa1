import { useEffect, useRef, useState } from 'react';
import {
  changeMapDraft,
  keepOutlineDrawn,
  type MapDraft,
  photoUrl,
  type SideOnMap,
  setRunOff,
  type ZoneMap,
  zoneAt,
} from '../../actions';
import { type Point, withCorner } from '../../engine/photo';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { Button, Notice, PhotoStage, UndoIcon } from '../parts';
import { say, useDeed, useDesk, useQuestion } from '../shell';
import { BoardDrawing } from './BoardDrawing';
import { DraftPad } from './DraftPad';
import { closes, holdsWork, neighboursOf, touched } from './drawn';
import { SidePad } from './SidePad';
import { sizeUnknown } from './sizeUnknown';
import { ZonePad } from './ZonePad';
import { ZoneTiles } from './ZoneTiles';

const words = w.zoneMap.outline;

interface DrawingBoardProps {
  readonly title: string;
  readonly zones: readonly Thing<'zone'>[];
  readonly map: ZoneMap;
  readonly side: SideOnMap;
  readonly draft: MapDraft | null;
}

const touchDoes = (draft: MapDraft | null, placing: boolean): string => {
  if (draft === null || draft.doing === 'water') return words.touchZone;
  if (draft.doing === 'outline') return words.touchCorner;
  if (draft.doing === 'scale') return words.touchEnd;
  return placing ? words.touchMove : words.touchPick;
};

/** The picture that is drawn on, and under it what the next touch means. */
export function DrawingBoard({ title, zones, map, side, draft: kept }: DrawingBoardProps) {
  const desk = useDesk();
  const { thing: elevation, body } = side.elevation;
  const size = side.size ?? sizeUnknown;
  const url = useQuestion(photoUrl(desk, body.photo, 'whole'));
  const [chosen, setChosen] = useState<string>();
  const [placing, setPlacing] = useState(false);
  /** What was begun and left, to be brought back: a finger slips. */
  const [dropped, setDropped] = useState<MapDraft>();
  const board = useRef<HTMLDivElement>(null);
  const pad = useRef<HTMLDivElement>(null);
  const { run, refused } = useDeed();
  const zoneOf = (name: string | null | undefined) => zones.find(({ thing }) => thing === name);
  // A zone may have ended since it was begun here.
  const draft = kept && 'zone' in kept && !zoneOf(kept.zone) ? null : kept;

  const doing = draft && `${draft.doing} ${'zone' in draft ? draft.zone : ''}`;
  const before = useRef(doing);
  useEffect(() => {
    if (before.current === doing) return;
    before.current = doing;
    // The button that was pressed is gone: the keyboard goes on at the picture, and after it at what can be done next.
    const next = doing ? board.current?.querySelector<HTMLElement>('.stage-touch') : pad.current;
    next?.focus({ preventScroll: true });
  }, [doing]);

  /** The picture into view: what comes next is a touch on it. */
  const toBoard = () => board.current?.scrollIntoView?.({ block: 'start' });
  const change = (to: (draft: MapDraft | null) => MapDraft | null) => run(() => changeMapDraft(desk, elevation, to));
  const begin = (next: MapDraft | null) => {
    setPlacing(false);
    setDropped(undefined);
    toBoard();
    return change(() => next);
  };
  const leave = () => {
    setDropped(draft ?? undefined);
    return change(() => null);
  };
  const keep = () =>
    run(
      () => keepOutlineDrawn(desk, elevation),
      ({ zone }) => {
        setChosen(zone);
        setPlacing(false);
        const letter = zoneOf(zone)?.body.letter ?? '';
        say(draft?.doing === 'corners' ? words.kept : words.closed(letter));
      },
    );
  const water = (at: Point, from: string | null) => {
    const zone = zoneOf(zoneAt(side, at));
    const source = zoneOf(from);
    if (!zone) return say(words.waterNoZone);
    if (!source) return change(() => ({ doing: 'water', from: zone.thing }));
    return run(
      () => setRunOff(desk, source.thing, zone.thing),
      () => {
        say(words.waterDrawn(source.body.letter, zone.body.letter));
        void change(() => ({ doing: 'water', from: null }));
      },
    );
  };
  const touch = (at: Point) => {
    if (draft === null) return setChosen(zoneOf(zoneAt(side, at))?.thing);
    if (draft.doing === 'water') return void water(at, draft.from);
    if (draft.doing === 'outline' && closes(draft.corners, at, size)) return void keep();
    if (draft.doing === 'corners' && placing && draft.at) {
      const held = draft.at;
      setPlacing(false);
      return void change((now) =>
        now?.doing === 'corners' ? { ...now, outline: withCorner(now.outline, held, () => at) } : now,
      );
    }
    const neighbours = draft.doing === 'outline' ? neighboursOf(side, draft.zone) : [];
    return void change((now) => now && touched(now, at, neighbours, size));
  };
  const drawing = draft !== null;
  const shown = zoneOf(chosen);
  return (
    <div ref={board} className={drawing ? 'draw-board drawing' : 'draw-board'}>
      <PhotoStage
        url={url}
        alt={w.zoneMap.mapOf(title, body.side)}
        size={size}
        onTouch={touch}
        touchDoes={touchDoes(draft, placing)}
      >
        <BoardDrawing side={side} zones={zones} size={size} draft={draft} chosen={shown?.thing} runOffs={map.runOffs} />
      </PhotoStage>
      <div ref={pad} className="draw-pad stack" tabIndex={-1}>
        {refused && <Notice kind="problem" title={refused} />}
        {draft ? (
          <DraftPad
            draft={draft}
            elevation={side.elevation}
            size={size}
            zoneOf={zoneOf}
            placing={placing}
            onPlacing={setPlacing}
            onChange={change}
            onLeave={leave}
            onKeep={keep}
          />
        ) : (
          <>
            {dropped && holdsWork(dropped) && (
              <div className="row by-hand">
                <Button size="round" icon={<UndoIcon />} onClick={() => begin(dropped)}>
                  {words.bringBack}
                </Button>
              </div>
            )}
            <ZonePad zones={zones} side={side} chosen={shown} onBegin={begin} />
          </>
        )}
      </div>
      {!drawing && (
        <div className="draw-rest stack">
          <ZoneTiles
            zones={zones}
            side={side}
            chosen={shown?.thing}
            onChoose={(zone) => {
              setChosen(zone);
              toBoard();
            }}
          />
          <SidePad side={side} map={map} onBegin={begin} />
        </div>
      )}
    </div>
  );
}
