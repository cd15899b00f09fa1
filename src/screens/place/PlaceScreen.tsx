import { useState } from 'react';
import { climateSet, tabs } from '../../actions';
import { measure, number, w } from '../../words';
import { Button, EmptyState, Notice, Page, Reading, Section } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';
import { AirEntry } from './AirEntry';
import { AirOutcome } from './AirOutcome';
import { AirSources } from './AirSources';
import '../parts/plainTable.css';
import './place.css';

const words = w.place;

/** How corrosive the air of the place is, as two standards tell it of clean coupons. */
export function PlaceScreen() {
  const desk = useDesk();
  const climate = useQuestion(climateSet(desk));
  const mayWrite = useQuestion(tabs(desk)).mode === 'writing';
  const [editing, setEditing] = useState(false);
  return (
    <Page title={words.title} lead={words.lead} back={{ to: pathTo.settings(), label: words.back }}>
      <Notice kind="note" title={words.coupons} />
      {climate === undefined ? (
        <Reading />
      ) : editing ? (
        <AirEntry climate={climate} onDone={() => setEditing(false)} />
      ) : climate === null ? (
        <EmptyState
          title={words.none}
          actions={
            mayWrite && (
              <Button kind="main" onClick={() => setEditing(true)}>
                {words.enter}
              </Button>
            )
          }
        />
      ) : (
        <>
          <Section
            title={words.entry}
            actions={
              mayWrite && (
                <span className="not-printed">
                  <Button onClick={() => setEditing(true)}>{words.change}</Button>
                </span>
              )
            }
          >
            <dl className="air">
              {(['temperature', 'humidity', 'so2', 'chloride'] as const).map((what) => (
                <div key={what}>
                  <dt>{words[what]}</dt>
                  <dd>
                    {what === 'temperature'
                      ? measure('temperature', climate.temperature)
                      : `${number(climate[what])} ${words.units[what]}`}
                  </dd>
                </div>
              ))}
              {climate.from && (
                <div>
                  <dt>{words.from}</dt>
                  <dd>{climate.from}</dd>
                </div>
              )}
            </dl>
          </Section>
          <AirOutcome air={climate} />
          <AirSources />
        </>
      )}
    </Page>
  );
}
