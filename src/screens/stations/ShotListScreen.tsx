import { useState } from 'react';
import { type Light, type ShotList, shotList } from '../../actions';
import { cautionsAt, roundTypes } from '../../engine/trade';
import { date, w, whole, workName } from '../../words';
import { LinkButton, Notice, Page, Reading, Section } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { Select } from '../parts/Select';
import { pathTo, useDesk, useQuestion } from '../shell';
import { NotHere } from '../shell/NotHere';
import { LightNow } from './LightNow';
import { ShotExpected } from './ShotExpected';
import { ShotRow } from './ShotRow';
import { shownShot } from './shotText';
import '../parts/lines.css';
import '../parts/plainTable.css';
import './stations.css';

const words = w.stations.shots;

/** What a round asks to be photographed: what is there, what is not, and the camera for each. */
export function ShotListScreen({ sculpture }: { readonly sculpture: string }) {
  const [round, setRound] = useState<string>();
  const list = useQuestion(shotList(useDesk(), sculpture, round));
  if (list === undefined) return <Reading />;
  if (list === null) return <NotHere />;
  return <Shots list={list} choose={setRound} />;
}

interface ShotsProps {
  readonly list: ShotList;
  readonly choose: (round: string) => void;
}

function Shots({ list, choose }: ShotsProps) {
  const [light, setLight] = useState<Light>();
  const { thing, body } = list.sculpture;
  const { round, rounds } = list;
  const ended = round?.body.ended;
  const wanted = list.shots.filter(({ of }) => of !== 'zone');
  const there = wanted.filter(({ photos }) => photos.length > 0).length;
  const work = workName({ body });
  return (
    <Page
      title={words.title}
      over={words.over(work, round ? roundName(round) : words.noRound)}
      lead={wanted.length === 0 ? undefined : tally(there, wanted.length)}
      back={{ to: pathTo.sculpture(thing), label: body.title || w.sculptures.untitled }}
    >
      <p className="only-printed">{words.print}</p>
      <div className="stack not-printed">
        {rounds.length > 1 && round && (
          <Select
            label={words.round}
            value={round.thing}
            onChange={choose}
            options={rounds.map((each) => ({ value: each.thing, label: roundName(each) }))}
          />
        )}
        {(ended || !round) && (
          <Notice
            title={ended ? words.ended(date(ended)) : words.noRound}
            actions={
              rounds.every((each) => each.body.ended) &&
              list.zones.length > 0 && (
                <LinkButton to={pathTo.startRound(thing)} size="round">
                  {words.start}
                </LinkButton>
              )
            }
          >
            <p>{ended ? words.endedWhat : words.noRoundWhat}</p>
          </Notice>
        )}
        {!ended && (
          <>
            <ShotExpected list={list} light={light} />
            {cautionsAt('photo').map(({ id, name, text }) => (
              <Notice key={id} kind="caution" title={name}>
                <p>{text}</p>
              </Notice>
            ))}
            <LightNow light={light} setLight={setLight} />
            <p className="soft">{words.cards}</p>
          </>
        )}
      </div>
      <Part list={list} of="station" light={light} title={words.stations} none={words.stationsNone} />
      <Part list={list} of="sentinel" light={light} title={words.squares} none={words.squaresNone} />
      {list.zones.length > 0 && (
        <Part list={list} of="zone" light={light} title={words.zones} lead={words.zonesWhat} none="" />
      )}
      <div className="row not-printed">
        <LinkButton to={pathTo.stations(thing)}>{words.toStations}</LinkButton>
        <LinkButton to={pathTo.cards(thing)}>{w.stations.toCards}</LinkButton>
      </div>
      <PrintRow />
    </Page>
  );
}

interface PartProps {
  readonly list: ShotList;
  readonly of: 'station' | 'sentinel' | 'zone';
  readonly light: Light | undefined;
  readonly title: string;
  readonly lead?: string;
  readonly none: string;
}

function Part({ list, of, light, title, lead, none }: PartProps) {
  const shots = list.shots.filter((shot) => shot.of === of);
  const there = shots.filter(({ photos }) => photos.length > 0).length;
  return (
    <Section
      title={title}
      lead={shots.length > 0 ? [lead, tally(there, shots.length)].filter(Boolean).join(' ') : none}
    >
      {shots.length > 0 && (
        <ol className="shots bare">
          {shots.map((shot) => (
            <ShotRow key={shot.thing} list={list} shown={shownShot(list, shot)} light={light} />
          ))}
        </ol>
      )}
    </Section>
  );
}

const tally = (there: number, of: number): string => (there === of ? words.all : words.there(whole(there), whole(of)));

const roundName = ({ body }: NonNullable<ShotList['round']>): string => {
  const type = roundTypes.find(({ id }) => id === body.type)?.name ?? body.type;
  return (body.ended ? words.roundOf : words.roundUnderWay)(type, date(body.date));
};
