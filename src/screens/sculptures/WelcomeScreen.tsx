import { useState } from 'react';
import { openDemo } from '../../actions';
import { sayReason, w } from '../../words';
import { Button, CarryIcon, LinkButton, Notice, Page } from '../parts';
import { pathTo, useCollections } from '../shell';
import { DeviceNotes } from './DeviceNotes';
import { StartYourOwn } from './StartYourOwn';
import './welcome.css';

const words = w.sculptures.welcome;

/** Nothing begun yet: three ways to begin, and what to know of this device first. */
export function WelcomeScreen() {
  const [setting, setSetting] = useState(false);
  return (
    <Page title={words.title} over={words.over} lead={words.lead}>
      <ul className="ways bare">
        <li className="way card">
          <h2>{words.own}</h2>
          <p className="soft">{words.ownWhat}</p>
          <Button kind="main" size="big" wide onClick={() => setSetting(true)}>
            {words.own}
          </Button>
        </li>
        <li className="way card">
          <h2>{words.file}</h2>
          <p className="soft">{words.fileWhat}</p>
          <LinkButton to={pathTo.carry()} size="big" wide icon={<CarryIcon />}>
            {words.file}
          </LinkButton>
        </li>
        <li className="way card">
          <h2>{words.demo}</h2>
          <p className="soft">{words.demoWhat}</p>
          <OpenDemo />
        </li>
      </ul>
      <DeviceNotes />
      <StartYourOwn open={setting} onClose={() => setSetting(false)} />
    </Page>
  );
}

function OpenDemo() {
  const { showDemo } = useCollections();
  const [busy, setBusy] = useState(false);
  const [problem, setProblem] = useState<string>();
  const open = async () => {
    setBusy(true);
    const opening = await openDemo();
    setBusy(false);
    if (opening.state === 'open') showDemo(opening.desk);
    else setProblem(sayReason(opening.reason));
  };
  return (
    <>
      <Button size="big" wide onClick={open} disabled={busy}>
        {busy ? words.demoLoading : words.demo}
      </Button>
      {problem && <Notice kind="problem" title={problem} />}
    </>
  );
}
