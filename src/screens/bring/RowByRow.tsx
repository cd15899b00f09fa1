import { useState } from 'react';
import type { RowRead, WorkHere } from '../../engine/bring';
import { treatmentOf } from '../../engine/trade';
import { date, w, whole } from '../../words';
import { Choice, Section } from '../parts';
import { LongList } from '../parts/LongList';
import { Reasons } from '../parts/Reasons';

const words = w.bring;
const both = ['all', 'out'] as const;

/** Each row as it would be taken over, or why it stays out. */
export function RowByRow({ rows, works }: { readonly rows: readonly RowRead[]; readonly works: readonly WorkHere[] }) {
  const [shown, setShown] = useState<(typeof both)[number]>('all');
  const out = rows.filter(({ treatment }) => !treatment);
  const counted = (n: number) => words.rows(n, whole(n));
  return (
    <Section title={words.preview} lead={words.counts(counted(rows.length - out.length), counted(out.length))}>
      {out.length > 0 && (
        <Choice
          label={words.show}
          tiles="narrow"
          options={both.map((value) => ({ value, label: words.shows[value] }))}
          value={shown}
          onChange={setShown}
        />
      )}
      <LongList
        rows={shown === 'out' ? out : rows}
        className="bring-rows"
        show={(row) => (
          <li key={row.line}>
            <p className="soft small">{words.line(whole(row.line))}</p>
            {row.treatment ? (
              <Taken treatment={row.treatment} works={works} />
            ) : (
              <>
                <p className="strong">{words.staysOut}</p>
                <p className="bring-cell">{words.asItStands(row.cells.join(' · '))}</p>
              </>
            )}
            <Reasons reasons={[...row.problems, ...row.remarks]} />
          </li>
        )}
      />
    </Section>
  );
}

interface TakenProps {
  readonly treatment: NonNullable<RowRead['treatment']>;
  readonly works: readonly WorkHere[];
}

function Taken({ treatment, works }: TakenProps) {
  const { sculpture, zones, type, date: day, product, coats, by, note } = treatment;
  const work = works.find(({ thing }) => thing === sculpture);
  const letters = work?.zones.filter(({ thing }) => zones.includes(thing)).map(({ letter }) => letter) ?? [];
  const where = letters.length === 0 ? words.wholeWork : `${words.zone} ${letters.join(', ')}`;
  const more = [product, coats === undefined ? '' : words.coats(coats), by, note].filter(Boolean);
  return (
    <>
      <p className="strong bring-cell">
        {date(day)} · {treatmentOf(type)?.name ?? type}
      </p>
      <p className="bring-cell">
        {work?.number} · {work?.title} · {where}
      </p>
      {more.length > 0 && <p className="soft bring-cell">{more.join(' · ')}</p>}
    </>
  );
}
