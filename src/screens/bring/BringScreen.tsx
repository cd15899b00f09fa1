import { useEffect, useState } from 'react';
import { worksHere } from '../../actions';
import type { WorkHere } from '../../engine/bring';
import { w } from '../../words';
import { Choice, EmptyState, LinkButton, Page, Reading } from '../parts';
import { pathTo, useDesk } from '../shell';
import { BringList } from './BringList';
import { BringPhotos } from './BringPhotos';
import { BringReport } from './BringReport';
import './bring.css';

const words = w.bring;
const ways = ['list', 'photos', 'report'] as const;
type Way = (typeof ways)[number];

/** Lists, old photos and earlier reports, taken over into the record. */
export function BringScreen() {
  const desk = useDesk();
  const [works, setWorks] = useState<readonly WorkHere[]>();
  const [way, setWay] = useState<Way>('list');
  useEffect(() => {
    let here = true;
    void worksHere(desk).then((found) => here && setWorks(found));
    return () => {
      here = false;
    };
  }, [desk]);
  return (
    <Page title={words.title} lead={words.lead} back={{ to: pathTo.carry(), label: w.carry.title }}>
      {!works ? (
        <Reading />
      ) : works.length === 0 ? (
        <EmptyState
          title={words.noWorks}
          actions={<LinkButton to={pathTo.newSculpture()}>{w.sculptures.add}</LinkButton>}
        >
          <p>{words.noWorksWhat}</p>
        </EmptyState>
      ) : (
        <>
          <div className="not-printed">
            <Choice
              label={words.what}
              options={ways.map((value) => ({ value, label: words.ways[value], detail: words.waysWhat[value] }))}
              value={way}
              onChange={setWay}
            />
          </div>
          {way === 'list' && <BringList works={works} />}
          {way === 'photos' && <BringPhotos works={works} />}
          {way === 'report' && <BringReport works={works} />}
        </>
      )}
    </Page>
  );
}
