import { useLayoutEffect, useMemo, useState } from 'react';
import {
  type CollectionInsights,
  collectionInsights,
  type HoldSaid,
  keepWalkSetting,
  type LookSaid,
  patrolWalk,
  photoForLook,
  recordAllClear,
  recordLook,
  type WalkSetting,
  type WorkPassed,
  walkList,
  walkSettingKept,
} from '../../actions';
import { date, midSentence, w } from '../../words';
import { EmptyState, LinkButton, Notice, Page, Reading } from '../parts';
import { HeldLine } from '../parts/HeldLine';
import { useHeld } from '../parts/useHeld';
import { pathTo, say, useDeed, useDesk, useHoldUp, useQuestion } from '../shell';
import { PhotoExpected } from './PhotoExpected';
import { UndoLook } from './UndoLook';
import { WalkEnd } from './WalkEnd';
import { WalkSettingRow } from './WalkSettingRow';
import { WalkWork } from './WalkWork';
import './look.css';

const words = w.walk;

/** Past all works between two rounds: is the green back on what was coated? The list stays as it opened: due days that come later are taken in by a touch. */
export function WalkScreen() {
  const desk = useDesk();
  const works = useQuestion(patrolWalk(desk));
  const insights = useQuestion(collectionInsights(desk));
  return (
    <Page
      title={words.title}
      lead={words.lead}
      back={{ to: pathTo.sculptures(), label: words.back }}
      narrow
      actions={<UndoLook />}
    >
      {works === undefined || insights === undefined ? (
        <Reading />
      ) : works.every(({ zones }) => zones.length === 0) ? (
        <EmptyState title={words.none} actions={<LinkButton to={pathTo.sculptures()}>{words.back}</LinkButton>}>
          {words.noneWhat}
        </EmptyState>
      ) : (
        <Past works={works} insights={insights} />
      )}
    </Page>
  );
}

/** What the holds say of each zone, as far as they were worked out. */
const holdsSaid = ({ perWork }: CollectionInsights): ReadonlyMap<string, HoldSaid> =>
  new Map(
    perWork.flatMap(({ holds, advice }) =>
      holds.map(({ zone, onNow }): [string, HoldSaid] => [
        zone,
        { advice: advice.find((row) => row.zone === zone), onNow },
      ]),
    ),
  );

/** Kept on the device for the day, so that it is said once and is still said after a restart. */
const useSetting = (): readonly [WalkSetting, (setting: WalkSetting) => void] => {
  const desk = useDesk();
  const [setting, setSetting] = useState<WalkSetting>({ wet: 'dry', planned: true });
  const holdUp = useHoldUp();
  useLayoutEffect(() => holdUp(walkSettingKept(desk).then(setSetting)), [desk, holdUp]);
  const change = (next: WalkSetting) => {
    setSetting(next);
    void keepWalkSetting(desk, next);
  };
  return [setting, change];
};

interface PastProps {
  readonly works: readonly WorkPassed[];
  readonly insights: CollectionInsights;
}

function Past({ works, insights }: PastProps) {
  const desk = useDesk();
  const { held, take } = useHeld(insights);
  // Where they were not all there when it opened, a line says so, and keeps its room.
  const [waited] = useState(insights.workingOut > 0);
  const said = useMemo(() => holdsSaid(held), [held]);
  const waiting = insights.workingOut > 0;
  const [setting, setSetting] = useSetting();
  const { run, refused } = useDeed();
  const today = desk.today();
  const list = useMemo(() => walkList(works, said, today), [works, said, today]);
  const answer = (sculpture: string, zone: string, letter: string, result: LookSaid['result']) =>
    void run(
      () => recordLook(desk, sculpture, { zone, result, ...setting }),
      () => say(w.look.kept(letter, midSentence(w.look[result]))),
    );
  const allClear = (sculpture: string, zones: readonly string[]) =>
    void run(
      () => recordAllClear(desk, sculpture, zones, setting),
      () => say(words.allKept(zones.length)),
    );
  const keep = (look: string, file: File) =>
    void run(
      () => photoForLook(desk, look, file),
      () => say(w.round.photo.kept),
    );
  const zones = works.flatMap((work) => work.zones);
  return (
    <>
      <p className="small">{words.cautions}</p>
      <WalkSettingRow setting={setting} onChange={setSetting} />
      <p className="strong" role="status">
        {list.looked > 0 ? words.progress(list.looked, list.left) : words.watch(list.left)}
      </p>
      {waited && (
        <HeldLine
          waits={words.dueWaits}
          came={words.dueCame}
          take={words.dueTake}
          shown={waiting ? 'waits' : held.workingOut > 0 ? 'came' : 'neither'}
          onTake={take}
        />
      )}
      <p>{w.look.greenWhat}</p>
      <PhotoExpected
        looks={zones.flatMap(({ last }) => last ?? [])}
        zones={zones.map(({ zone }) => zone)}
        keep={keep}
      />
      {refused && <Notice kind="problem" title={refused} />}
      {list.looked + list.left === 0 && (
        <Notice title={words.nothingDue}>{list.nextDue && <p>{words.next(date(list.nextDue))}</p>}</Notice>
      )}
      {list.works
        .filter(({ work }) => work.zones.length > 0)
        .map((row) => (
          <WalkWork
            key={row.work.sculpture.thing}
            row={row}
            today={today}
            answer={answer}
            allClear={allClear}
            keep={keep}
          />
        ))}
      <WalkEnd list={list} today={today} />
    </>
  );
}
