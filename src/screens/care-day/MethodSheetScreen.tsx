import { useState } from 'react';
import { methodsOn } from '../../engine/care';
import type { Thing } from '../../engine/record';
import { methodOf } from '../../engine/trade';
import { date, w, workName } from '../../words';
import { Button, Page, Reading, Section } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { pathTo } from '../shell';
import { NotHere } from '../shell/NotHere';
import { useCareOf } from './careOfWork';
import { MethodSheetEntry } from './MethodSheetEntry';
import '../parts/lines.css';

const words = w.careDay.methods;

/** What may and what may never be done to one work: on screen, and on paper for the one with the hose. */
export function MethodSheetScreen({ sculpture }: { readonly sculpture: string }) {
  const care = useCareOf(sculpture);
  const [open, setOpen] = useState(false);
  if (care === undefined) return <Reading />;
  if (care === null) return <NotHere />;
  const { body } = care.record.sculpture;
  const sheet = care.planned.methodSheet[0];
  return (
    <Page
      narrow
      title={words.title}
      over={workName({ body })}
      lead={words.lead}
      back={{ to: pathTo.careDay(sculpture), label: w.careDay.title }}
      actions={
        <Button kind="main" size="round" onClick={() => setOpen(true)}>
          {words.change}
        </Button>
      }
    >
      <Methods sheet={sheet} />
      <PrintRow />
      {open && <MethodSheetEntry sculpture={sculpture} sheet={sheet} onClose={() => setOpen(false)} />}
    </Page>
  );
}

function Methods({ sheet }: { readonly sheet: Thing<'methodSheet'> | undefined }) {
  const { allowed, forbidden, alsoForbidden, usual } = methodsOn(sheet);
  const said = words.said(sheet?.body.setBy ?? '', sheet?.body.date ? date(sheet.body.date) : '');
  const rows = forbidden.map((id) => ({ id, name: methodOf(id)?.name ?? id, why: methodOf(id)?.why }));
  return (
    <>
      <p className="soft">{usual ? w.careDay.forbiddenUsual : said}</p>
      <Section title={words.forbidden}>
        {rows.length + alsoForbidden.length === 0 ? (
          <p>{words.none}</p>
        ) : (
          <ul>
            {alsoForbidden.map((line) => (
              <li key={line} className="strong">
                {line}
              </li>
            ))}
            {rows.map(({ id, name, why }) => (
              <li key={id}>
                <span className="strong">{name}</span>
                {why && <span className="soft line-detail">{why}</span>}
              </li>
            ))}
          </ul>
        )}
      </Section>
      <Section title={words.allowed}>
        {allowed.length === 0 ? (
          <p>{words.none}</p>
        ) : (
          <ul>
            {allowed.map((id) => (
              <li key={id}>{methodOf(id)?.name ?? id}</li>
            ))}
          </ul>
        )}
      </Section>
    </>
  );
}
