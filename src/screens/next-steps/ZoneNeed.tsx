import { memo, useId, useState } from 'react';
import type { NeedOf, Rank } from '../../engine/condition';
import type { FirmPlace } from '../../engine/firmness';
import { kindOf } from '../../engine/trade';
import { list, midSentence, type NameOfThing, sayReason, w, whole } from '../../words';
import { Button, IndexDial, LinkButton, Notice } from '../parts';
import { Fold } from '../parts/Fold';
import { Reasons } from '../parts/Reasons';
import { pathTo } from '../shell';
import { ClassBadges, ClassReasons } from './ClassesShown';
import { FirmMark } from './FirmMark';
import { SetClassSheet } from './SetClassSheet';
import { cautionsFor, doNext } from './whatNext';

const words = w.nextSteps;

interface ZoneNeedProps {
  readonly rank: Rank;
  readonly zone: string;
  readonly need: NeedOf;
  readonly names: NameOfThing;
  /** Undefined until it was worked out. */
  readonly place: FirmPlace | undefined;
}

/** One zone in the list: why it stands there, its classes, and what to do next in plain words. */
export const ZoneNeed = memo(function ZoneNeed({ rank, zone, need, names, place }: ZoneNeedProps) {
  const id = useId();
  const [setting, setSetting] = useState(false);
  const { record, score, classes } = need;
  const own = classes.zones.find(({ about }) => about === zone);
  const here = record.zones.find(({ thing }) => thing === zone);
  const scored = score.zones.find((row) => row.zone === zone);
  if (!own || !here || !scored) return null;
  const next = doNext(own);
  const cautions = cautionsFor(next, {
    zone: here.body,
    kinds: scored.findings.map(({ finding }) => finding.kind),
    inserts: record.inserts.some(({ body }) => body.zone === undefined || body.zone === zone),
    dangers: classes.dangers.filter((danger) => danger.zone === zone),
  });
  // Said once for the whole page: see HowFirm.
  const why = rank.reasons.filter(({ code }) => code !== 'not yet known');
  const title = record.sculpture.body.title;
  return (
    <li className="need card">
      <article aria-labelledby={id} className="stack">
        <header className="need-head">
          <span className="rank figures">{rank.rank}</span>
          <div className="grow">
            <h3 id={id}>
              {words.zoneHead(here.body.letter, here.body.name)}
              <span className="need-work"> {title}</span>
            </h3>
            <ClassBadges classes={own} />
          </div>
          <IndexDial figure={scored} of={words.zoneHead(here.body.letter, here.body.name)} size="small" />
        </header>
        {next === 'ask' && (
          <Notice kind="stop" title={words.askConservator}>
            <p>{words.askBecause(list(own.stopWords.map((kind) => words.quoted(kindOf(kind)?.name ?? kind))))}</p>
            <p>{words.askWhat}</p>
          </Notice>
        )}
        {next !== 'ask' && (
          <p>
            <span className="strong">{words.whatNext}: </span>
            {words.doNext[next]}
          </p>
        )}
        {own.recommendation.askConservator.map((reason) => (
          <Notice key={reason.code} kind="caution" title={sayReason(reason, names)} />
        ))}
        <Reasons reasons={why} nameOf={names} label={words.whyHere(rank.rank)} />
        {place && <FirmMark place={place} />}
        {cautions.length > 0 && (
          <p className="small">
            <span className="strong">{words.cautions}: </span>
            {list(cautions.map(({ name }) => midSentence(name)))}.
          </p>
        )}
        <Fold show={words.why} hide={words.whyHide} alsoOnPaper>
          <div className="stack">
            <ClassReasons classes={own} names={names} />
            <p className="soft small figures">{words.burdenRange(whole(rank.burden.low), whole(rank.burden.high))}</p>
            {cautions.length > 0 && (
              <div>
                <p className="strong">{words.cautions}</p>
                <ul className="reasons">
                  {cautions.map((caution) => (
                    <li key={caution.id}>
                      <span className="strong">{caution.name}: </span>
                      {caution.text}
                    </li>
                  ))}
                </ul>
              </div>
            )}
          </div>
        </Fold>
        <div className="row not-printed">
          <Button onClick={() => setSetting(true)} aria-label={words.setFor(here.body.letter, title)}>
            {words.set}
          </Button>
          <LinkButton kind="quiet" to={pathTo.sculpture(record.sculpture.thing)}>
            {words.toSculpture}
          </LinkButton>
          <LinkButton kind="quiet" to={pathTo.thenAndNow(record.sculpture.thing)}>
            {words.toThenAndNow}
          </LinkButton>
          <LinkButton kind="quiet" to={pathTo.overTime(record.sculpture.thing)}>
            {w.overTime.link}
          </LinkButton>
        </div>
        {setting && (
          <SetClassSheet
            round={classes.round}
            classes={own}
            about={`${words.zoneHead(here.body.letter, here.body.name)}, ${title}`}
            onClose={() => setSetting(false)}
          />
        )}
      </article>
    </li>
  );
});
