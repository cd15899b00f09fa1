import { useId } from 'react';
import { number, w } from '../../words';
import { LinkButton } from '../parts';
import { HoldBars } from '../parts/charts';
import { Fold } from '../parts/Fold';
import { holdBarRows } from '../parts/holdBarRows';
import { Reasons } from '../parts/Reasons';
import { pathTo } from '../shell';
import { groupName } from './groupName';
import { HoldTable } from './HoldTable';
import { NextLook, OnNow, WaxAgain } from './ZoneFacts';
import type { ZoneRow } from './zoneRows';

const words = w.holds;

/** One zone: what lies on it, when to wax again, when to look, whether its holds get shorter, and behind it its holds and why. */
export function ZoneHold({ row }: { readonly row: ZoneRow }) {
  const id = useId();
  const { sculpture, zone, holds, advice, stopped } = row;
  const name = words.zoneHead(zone.body.letter, zone.body.name);
  const { word, n, p, lastPair } = holds.shortening;
  // The drawing stands open where it has something to say.
  const leans = word === 'looks shorter, not proven' && holds.event === 'spot';
  const telling = advice.asksConservator || word === 'getting shorter' || leans;
  const bars = <HoldBars title={words.bars(name)} rows={holdBarRows(holds)} />;
  const pair = lastPair ? words.lastPair[lastPair] : '';
  return (
    <li className={telling ? 'card hold-zone wide' : 'card hold-zone'}>
      <article aria-labelledby={id} className="stack tight">
        <header>
          <h3 id={id}>
            {name}
            <span className="hold-work"> {sculpture.body.title}</span>
          </h3>
          <p className="soft small">{groupName(holds.group)}</p>
        </header>
        <dl className="hold-facts">
          <div>
            <dt>{words.onIt}</dt>
            <dd>
              <OnNow on={holds.onNow} past={advice.past} />
            </dd>
          </div>
          <div>
            <dt>{words.waxAgain}</dt>
            <dd>
              <WaxAgain advice={advice} stopped={stopped} />
            </dd>
          </div>
          <div>
            <dt>{words.nextLook}</dt>
            <dd>
              <NextLook advice={advice} />
            </dd>
          </div>
        </dl>
        {word !== 'too few' && word !== 'no sign of it' && (
          <p>
            {words.shortening[word](n, number(p, 3))} {pair && <span className="soft">{pair}</span>}
          </p>
        )}
        {telling && bars}
        <Fold show={words.whyFor(name)} hide={words.whyHide} alsoOnPaper whenOpened>
          <div className="stack">
            {!telling && bars}
            <HoldTable holds={holds} caption={words.holdsTitle} />
            <Reasons
              reasons={[...holds.reasons, ...advice.reasons, ...(advice.nextLook?.reasons ?? [])]}
              label={words.why}
            />
            <div className="row not-printed">
              <LinkButton kind="quiet" to={pathTo.sculpture(sculpture.thing)}>
                {words.toSculpture}
              </LinkButton>
              <LinkButton kind="quiet" to={pathTo.logbook(sculpture.thing)}>
                {words.toLogbook}
              </LinkButton>
              <LinkButton kind="quiet" to={pathTo.look(sculpture.thing)}>
                {words.toLook}
              </LinkButton>
            </div>
          </div>
        </Fold>
      </article>
    </li>
  );
}
