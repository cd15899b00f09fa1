import { useMemo, useState } from 'react';
import { photoUrl, plannedOfCollection, type YearAround, yearAround } from '../../actions';
import { w, workName } from '../../words';
import { Choice, EmptyState, LinkButton, Notice, NudgePad, Page, PhotoStage, Reading } from '../parts';
import { pathTo, say, useDeed, useDesk, useQuestion } from '../shell';
import { keepSite } from './keepSite';
import { SiteDrawing } from './SiteDrawing';
import { SiteFacts } from './SiteFacts';
import { blankSheet, walkPast } from './yearRows';
import './year.css';

const words = w.year.sitePlan;
const start = 'start';

/** Where the works stand: placed by a touch or by the arrow keys, set right by arrows. */
export function SitePlanScreen() {
  const desk = useDesk();
  const around = useQuestion(yearAround(desk));
  const planned = useQuestion(plannedOfCollection(desk));
  const back = { to: pathTo.year(), label: w.year.title };
  return (
    <Page title={words.title} lead={words.lead} back={back}>
      {!around || !planned ? (
        <Reading />
      ) : around.works.length === 0 ? (
        <EmptyState
          title={w.year.empty}
          actions={<LinkButton to={pathTo.sculptures()}>{w.year.toSculptures}</LinkButton>}
        />
      ) : (
        <SitePlan around={around} />
      )}
    </Page>
  );
}

function SitePlan({ around }: { readonly around: YearAround }) {
  const desk = useDesk();
  const { run, refused } = useDeed();
  const { site, siteSize } = around;
  const size = siteSize ?? blankSheet;
  const photo = site?.body.photo;
  const picture = useQuestion(photoUrl(desk, photo ?? '', 'whole'));
  const spots = site?.body.spots ?? [];
  const unplaced = around.works.find(({ sculpture }) => !spots.some(({ work }) => work === sculpture.thing));
  const [chosen, setChosen] = useState(unplaced?.sculpture.thing ?? start);
  const names = new Map(around.works.map(({ sculpture }) => [sculpture.thing, workName(sculpture)]));
  const what = chosen === start ? words.start : (names.get(chosen) ?? chosen);
  const at = chosen === start ? site?.body.start : spots.find(({ work }) => work === chosen);
  const walk = useMemo(() => {
    const placed = around.site?.body.spots.map(({ work }) => work) ?? [];
    const here = new Set(around.works.map(({ sculpture }) => sculpture.thing));
    return walkPast(
      placed.filter((work) => here.has(work)),
      around,
    );
  }, [around]);
  const place = (x: number, y: number, next: boolean) => {
    const inside = { x: onSheet(x), y: onSheet(y) };
    const others = spots.filter(({ work }) => work !== chosen);
    const patch =
      chosen === start
        ? { start: { ...site?.body.start, ...inside } }
        : { spots: [...others, { work: chosen, ...inside }] };
    return run(
      () => keepSite(desk, site, patch),
      () => {
        say(words.putDown(what));
        if (!next || chosen === start) return;
        const left = around.works.find(
          ({ sculpture }) => sculpture.thing !== chosen && !spots.some(({ work }) => work === sculpture.thing),
        );
        if (left) setChosen(left.sculpture.thing);
      },
    );
  };
  return (
    <>
      {refused && <Notice kind="problem" title={refused} />}
      <div className="site-plan">
        <PhotoStage
          url={photo ? picture : ''}
          alt={words.alt}
          size={size}
          onTouch={([x, y]) => void place(x, y, true)}
          touchDoes={words.touch(what)}
        >
          <SiteDrawing around={around} size={size} walk={walk.order} chosen={chosen} names={names} />
        </PhotoStage>
      </div>
      <p className="soft small">{words.legend}</p>
      <div className="stack not-printed">
        <Choice
          label={words.place}
          options={[
            ...around.works.map(({ sculpture }) => ({
              value: sculpture.thing,
              label: workName(sculpture),
              detail: spots.some(({ work }) => work === sculpture.thing) ? words.placed : words.notPlaced,
            })),
            { value: start, label: words.start, detail: site?.body.start ? words.placed : words.notPlaced },
          ]}
          value={chosen}
          onChange={setChosen}
        />
        <NudgePad
          what={what}
          aspect={size.height / size.width}
          disabled={!at}
          onMove={([dx, dy]) => at && void place(at.x + dx * nudges, at.y + dy * nudges, false)}
        />
      </div>
      <SiteFacts around={around} walk={walk} chosen={chosen} what={what} placed={at !== undefined} />
    </>
  );
}

/** One press of an arrow: a hundredth of the width, since a spot is no outline. */
const nudges = 5;

/** A spot is a disc, and stays whole on the sheet. */
const onSheet = (share: number): number => Math.min(1 - rim, Math.max(rim, share));
const rim = 0.03;
