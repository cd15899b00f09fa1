import { useState } from 'react';
import type { Row } from '../../engine/year';
import { date, midSentence, w } from '../../words';
import { Button, DownIcon, UpIcon } from '../parts';
import { Fold } from '../parts/Fold';
import type { YearAtHand } from './useYear';
import { Why } from './Why';
import { WorkSheet } from './WorkSheet';
import type { YearRow } from './yearRows';

const words = w.year;

interface WorksOfYearProps {
  readonly atHand: YearAtHand;
  /** All works, in the order they are to stand. */
  readonly onOrder: (order: readonly string[]) => void;
  readonly busy: boolean;
}

/** Each work with what it gets, why, and how long that takes. */
export function WorksOfYear({ atHand, onOrder, busy }: WorksOfYearProps) {
  const { rows, when } = atHand;
  const unsaid = when === 'over' ? words.notWritten : words.workingOut;
  const [open, setOpen] = useState<string>();
  const opened = rows.find(({ around }) => around.sculpture.thing === open);
  const names = rows.map(({ around }) => around.sculpture.thing);
  const swap = (at: number, to: number) =>
    onOrder(
      names.map((name, i) => (i === at ? names[to] : i === to ? names[at] : name)).filter((x) => x !== undefined),
    );
  return (
    <>
      <table className="plain-table cards year-table">
        <thead>
          <tr>
            <th scope="col">{words.work}</th>
            <th scope="col">{words.gets}</th>
            <th scope="col">{words.time}</th>
            <th scope="col" className="not-printed">
              <span className="unseen">{words.change}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row, i) => (
            <tr key={row.around.sculpture.thing}>
              <th scope="row">
                <span className="figures">{i + 1}. </span>
                {row.name}
                <div className="not-printed">
                  {row.proposal && (
                    <Fold show={words.why} hide={words.whyHide} whenOpened>
                      <Why row={row} />
                    </Fold>
                  )}
                </div>
              </th>
              <td data-head={words.gets}>
                <span>
                  {row.row ? <Gets row={row.row} /> : unsaid}
                  {row.row && <span className="soft small year-line">{row.kept ? words.said : words.proposed}</span>}
                </span>
              </td>
              <td data-head={words.time} className="figures">
                {row.time && <Spent row={row} />}
              </td>
              <td className="not-printed">
                <div className="row year-acts">
                  <Button
                    disabled={row.row === undefined && when !== 'over'}
                    aria-label={words.changeOf(row.name)}
                    onClick={() => setOpen(row.around.sculpture.thing)}
                  >
                    {words.change}
                  </Button>
                  <Button
                    kind="quiet"
                    icon={<UpIcon />}
                    disabled={busy || i === 0}
                    aria-label={words.up(row.name)}
                    onClick={() => swap(i, i - 1)}
                  />
                  <Button
                    kind="quiet"
                    icon={<DownIcon />}
                    disabled={busy || i === rows.length - 1}
                    aria-label={words.down(row.name)}
                    onClick={() => swap(i, i + 1)}
                  />
                </div>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {opened && <WorkSheet atHand={atHand} row={opened} onClose={() => setOpen(undefined)} />}
    </>
  );
}

function Gets({ row: { survey, lift, waxes, day } }: { readonly row: Row }) {
  return (
    <>
      <span className="year-line">
        {words.surveys[survey]}
        {lift && <>, {midSentence(words.lift)}</>}
      </span>
      <span className="year-line">
        {words.waxes}: <span>{words.waxCount(waxes)}</span>
      </span>
      <span className="year-line figures">{day ? date(day) : words.noDay}</span>
    </>
  );
}

/** Survey and wax together, with what it may come to. */
function Spent({ row: { time } }: { readonly row: YearRow }) {
  if (!time) return null;
  const of = (end: 'value' | 'low' | 'high') => time.survey[end] + time.wax[end];
  if (of('value') === 0) return <span className="soft">{words.waxCount(0)}</span>;
  return (
    <span>
      <span className="strong">{words.lasting(of('value'))}</span>{' '}
      <span className="soft year-line">({words.lastingRange(of('low'), of('high'))})</span>
    </span>
  );
}
