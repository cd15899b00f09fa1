import { useState } from 'react';
import { w } from '../../words';
import { Button, Field, Notice, Section } from '../parts';
import { say, useDeed, useDesk, useTyped } from '../shell';
import { keepYear } from './keepYear';
import type { YearAtHand } from './useYear';

const words = w.year;

/** Who helps in the year, and whom a helper calls. */
export function PeopleOfYear({ atHand }: { readonly atHand: YearAtHand }) {
  const desk = useDesk();
  const kept = atHand.plan?.body;
  const [helpers, setHelpers] = useState(kept?.helpers ?? '');
  const [contacts, setContacts] = useState(kept?.contacts ?? '');
  const typed = useTyped(['people of the year', String(atHand.year)], {
    helpers: [helpers, setHelpers],
    contacts: [contacts, setContacts],
  });
  const { run, refused, busy } = useDeed(typed);
  const changed = helpers !== (kept?.helpers ?? '') || contacts !== (kept?.contacts ?? '');
  const save = () => {
    const people = { helpers: helpers.trim() || undefined, contacts: contacts.trim() || undefined };
    return run(
      () => keepYear(desk, atHand, people),
      () => say(words.peopleSaved),
    );
  };
  return (
    <Section title={words.peopleTitle}>
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <div className="only-printed year-people">
        {helpers && <p>{helpers}</p>}
        {contacts && <p>{contacts}</p>}
      </div>
      <div className="stack not-printed">
        <Field
          label={words.helpers}
          hint={words.helpersHint}
          kind="long"
          value={helpers}
          onChange={setHelpers}
          maxLength={500}
          optional
        />
        <Field
          label={words.contacts}
          hint={words.contactsHint}
          kind="long"
          value={contacts}
          onChange={setContacts}
          maxLength={1000}
          optional
        />
      </div>
      <div className="row not-printed">
        <Button disabled={busy || !changed} onClick={save}>
          {words.peopleSave}
        </Button>
      </div>
    </Section>
  );
}
