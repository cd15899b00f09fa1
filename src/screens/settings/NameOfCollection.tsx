import { useState } from 'react';
import { collectionState, renameCollection } from '../../actions';
import { w } from '../../words';
import { Button, Field, Section } from '../parts';
import { say, useDeed, useDesk, useQuestion, useTyped } from '../shell';

const words = w.settings;

export function NameOfCollection() {
  const collection = useQuestion(collectionState(useDesk()));
  // Where none was set up yet the first screen asks for it.
  if (!collection || collection.name === null) return null;
  return <Rename key={collection.name} name={collection.name} />;
}

function Rename({ name }: { readonly name: string }) {
  const desk = useDesk();
  const [typed, setTyped] = useState(name);
  const unkept = useTyped(['name of the collection', 'all'], { typed: [typed, setTyped] });
  const { run, refused, busy } = useDeed(unkept);
  return (
    <Section title={words.collection}>
      {unkept.line}
      <Field label={words.collectionName} value={typed} onChange={setTyped} maxLength={200} error={refused} />
      {typed.trim() !== name && (
        <div className="row">
          <Button
            kind="main"
            disabled={busy}
            onClick={() =>
              run(
                () => renameCollection(desk, typed),
                () => say(words.renamed),
              )
            }
          >
            {words.rename}
          </Button>
        </div>
      )}
    </Section>
  );
}
