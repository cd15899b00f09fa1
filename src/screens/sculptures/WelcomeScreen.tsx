import { type ReactNode, Suspense, useId, useState } from 'react';
import { useLocation } from 'wouter';
import { lastFiles, openDemo } from '../../actions';
import { sayReason, tongueNow, w } from '../../words';
import { Notice, OnIcon, Page } from '../parts';
import { piece } from '../parts/piece';
import { TongueLinks } from '../parts/TongueChoice';
import { LastFiles, pathTo, useCollections, useDesk } from '../shell';
import { DeviceNotes } from './DeviceNotes';
import { asksForHomeScreen } from './homeScreen';
import { WalkPicture } from './WalkPicture';
import './welcome.css';

const words = w.sculptures.welcome;

/** Its sheet and fields come when they are asked for. */
const StartYourOwn = piece(async () => (await import('./StartYourOwn')).StartYourOwn);
/** Of no use but on an iPad that has not installed the app. */
const InstallFirst = piece(async () => (await import('./InstallFirst')).InstallFirst);

/** Nothing begun yet: three ways to begin, and what to know of this device first. */
export function WelcomeScreen() {
  const [, go] = useLocation();
  const { showDemo } = useCollections();
  const files = lastFiles(useDesk());
  const [setting, setSetting] = useState(false);
  /** What is gone on with once the app is installed, or all the same. */
  const [waits, setWaits] = useState<() => void>();
  const install = asksForHomeScreen(navigator, matchMedia('(display-mode: standalone)').matches);
  const installFirst = (then: () => void) => () => (install ? setWaits(() => then) : then());
  const [busy, setBusy] = useState(false);
  const [problem, setProblem] = useState<string>();
  const demo = async () => {
    setBusy(true);
    const opening = await openDemo(tongueNow().language);
    setBusy(false);
    if (opening.state === 'open') showDemo(opening.desk);
    else setProblem(sayReason(opening.reason));
  };
  return (
    <Page title={words.title} over={words.over} lead={words.lead}>
      <div className="welcome">
        <ul className="ways bare">
          <Way title={words.own} what={words.ownWhat} onClick={installFirst(() => setSetting(true))} main />
          <Way title={words.file} what={words.fileWhat} onClick={installFirst(() => go(pathTo.carry()))} />
          <Way title={words.demo} what={busy ? words.demoLoading : words.demoWhat} onClick={demo} busy={busy} />
        </ul>
        <WalkPicture />
      </div>
      <TongueLinks />
      {problem && <Notice kind="problem" title={problem} />}
      {files.length > 0 && (
        <Notice kind="caution" title={words.hadFiles}>
          <LastFiles files={files} />
        </Notice>
      )}
      <DeviceNotes />
      {waits && (
        <Suspense>
          <InstallFirst
            onClose={() => setWaits(undefined)}
            onAllTheSame={() => {
              setWaits(undefined);
              waits();
            }}
          />
        </Suspense>
      )}
      {setting && (
        <Suspense>
          <StartYourOwn open onClose={() => setSetting(false)} />
        </Suspense>
      )}
    </Page>
  );
}

interface WayProps {
  readonly title: string;
  readonly what: ReactNode;
  readonly onClick: () => void;
  readonly main?: boolean;
  readonly busy?: boolean;
}

/** One way to begin. The button is the title; its touch target is the whole card. */
function Way({ title, what, onClick, main, busy }: WayProps) {
  const id = useId();
  return (
    <li className={main ? 'way card main by-hand' : 'way card by-hand'}>
      <div className="grow">
        <button type="button" className="way-title" aria-describedby={id} disabled={busy} onClick={onClick}>
          {title}
        </button>
        <p id={id}>{what}</p>
      </div>
      <OnIcon />
    </li>
  );
}
