import type { ReactNode } from 'react';
import { type Planned, plannedAll, plannedOf, sculptureRecordOf } from '../../actions';
import type { SculptureRecord } from '../../engine/record';
import { Reading } from '../parts';
import { useDesk, useQuestion } from '../shell';
import { NotHere } from '../shell/NotHere';

/** A work and what is planned for it. */
export interface Around {
  readonly record: SculptureRecord;
  readonly planned: Planned;
}

interface AroundWorkProps {
  readonly sculpture: string;
  readonly show: (around: Around) => ReactNode;
}

export function AroundWork({ sculpture, show }: AroundWorkProps) {
  const desk = useDesk();
  const record = useQuestion(sculptureRecordOf(desk, sculpture));
  const planned = useQuestion(plannedOf(desk, sculpture));
  if (record === null) return <NotHere />;
  if (!record || !planned) return <Reading />;
  return show({ record, planned });
}

interface AroundThingProps {
  readonly kind: 'campaign' | 'hotDay';
  readonly thing: string;
  readonly show: (around: Around) => ReactNode;
}

/** The same, from the name of something planned for the work. */
export function AroundThing({ kind, thing, show }: AroundThingProps) {
  const all = useQuestion(plannedAll(useDesk()));
  if (!all) return <Reading />;
  const found = all[kind].find((each) => each.thing === thing);
  return found ? <AroundWork sculpture={found.body.sculpture} show={show} /> : <NotHere />;
}
