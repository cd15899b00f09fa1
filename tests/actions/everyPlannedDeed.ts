import * as actions from '../../src/actions';
import { nameOf } from '../../src/engine/record';
import type { EveryDeed } from './everyDeed';
import type { LivedIn } from './livedIn';

const task = ({ is }: LivedIn) => ({ sculpture: is.sculpture, what: 'Clear the weep hole', from: '2026-09-01' });

const kept = async (lived: LivedIn): Promise<string> => {
  const came = await actions.addPlanned(lived.desk, 'task', task(lived));
  if (!came.ok) throw new Error(came.reason.code);
  return came.thing;
};

/** Every action that says something planned, by its name; a second way of it after a comma. */
export const everyPlannedDeed: Readonly<Record<string, EveryDeed>> = {
  addPlanned: {
    before: async () => undefined,
    run: (lived) => actions.addPlanned(lived.desk, 'task', task(lived)),
  },
  editPlanned: {
    before: kept,
    run: ({ desk }, thing: string) => actions.editPlanned(desk, 'task', thing, { what: 'Clear both weep holes' }),
  } as EveryDeed,
  removePlanned: {
    before: kept,
    run: ({ desk }, thing: string) => actions.removePlanned(desk, 'task', thing),
  } as EveryDeed,
  reportIncident: {
    before: async () => undefined,
    run: ({ desk, is }) =>
      actions.reportIncident(desk, {
        ...{ sculpture: is.sculpture, date: '2026-09-01', sort: 'storm', what: 'A branch lies on it' },
        danger: 'yes',
      }),
  },
  setPlanned: {
    before: async () => undefined,
    run: ({ desk, is }) =>
      actions.setPlanned(desk, 'yearVerdict', nameOf.yearVerdict(is.sculpture, 2026), {
        sculpture: is.sculpture,
        year: 2026,
        verdict: 'hold',
        why: 'Wax holds',
        by: 'Steward',
        date: '2026-11-20',
      }),
  },
};

/** They ask what is planned, and write nothing. */
export const onlyAskOfPlans: readonly string[] = 'plannedAll plannedOf plannedOfCollection yearAround'.split(' ');
