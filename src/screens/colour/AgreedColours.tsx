import type { Thing } from '../../engine/record';
import { date, w } from '../../words';
import { Button, Section } from '../parts';
import { type PlacesOfWork, placeName } from './placeNames';
import { Swatch } from './Swatch';
import { wayInWords } from './wayOfReading';

const words = w.colour;

interface AgreedColoursProps {
  readonly agreed: readonly Thing<'agreedColour'>[];
  readonly places: PlacesOfWork;
  readonly onAdd: (() => void) | undefined;
  readonly onEdit: ((agreed: Thing<'agreedColour'>) => void) | undefined;
}

/** Every colour that was agreed for the work, the latest first. */
export function AgreedColours({ agreed, places, onAdd, onEdit }: AgreedColoursProps) {
  const rows = [...agreed].sort((a, b) => b.body.date.localeCompare(a.body.date));
  return (
    <Section
      title={words.agreed}
      lead={rows.length > 0 ? words.agreedLead : words.agreedNone}
      actions={onAdd && <Button onClick={onAdd}>{words.addAgreed}</Button>}
    >
      <ul className="bare colour-cards">
        {rows.map((row) => (
          <li key={row.thing} className="card colour-card">
            <Swatch value={row.body.value} illuminant={row.body.illuminant} />
            <div className="grow stack tight">
              <h3>{row.body.name}</h3>
              <p>{placeName(places, row.body.zone)}</p>
              <p>{words.agreedBy(date(row.body.date), row.body.by)}</p>
              <p className="figures">
                <span className="soft">{words.columns.figures} </span>
                {words.figures(row.body.value)}
              </p>
              <p className="small soft">{wayInWords(row.body)}</p>
              {row.body.kept && <p className="small">{words.keptAt(row.body.kept)}</p>}
              {row.body.note && <p className="small">{row.body.note}</p>}
              {onEdit && (
                <div className="row not-printed">
                  <Button kind="quiet" aria-label={words.editAgreed(row.body.name)} onClick={() => onEdit(row)}>
                    {words.change}
                  </Button>
                </div>
              )}
            </div>
          </li>
        ))}
      </ul>
    </Section>
  );
}
