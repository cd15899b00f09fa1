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

/** A day of hot work of that date, with what is given beside. */
const hotDay =
  (more: object) =>
  async (lived: LivedIn): Promise<string> => {
    const who = { role: 'Head of grounds' };
    const came = await actions.addPlanned(lived.desk, 'hotDay', {
      ...{ sculpture: lived.is.sculpture, date: '2026-10-15', permit: 'HW-1', authorisedBy: who, clearZone: 11 },
      ...{ checked: [], watchMinutes: 60, ...more },
    });
    if (!came.ok) throw new Error(came.reason.code);
    return came.thing;
  };
const workEnded = '2026-10-15T08:00:00.000+00:00';
const watchKept = { at: '2026-10-15T09:00:00.000+00:00', by: 'Helper', counted: 60 };
const closed = { at: '2026-10-15T09:05:00.000+00:00', by: 'Steward' };
const tick = { wall: Date.parse('2026-10-15T10:00:00.000+00:00'), steady: 1, page: 'one' };

const decided = (sculpture: string, title: string) => ({
  ...{ sculpture, title, date: '2026-09-01', chosen: title, refused: [], evidence: [], consulted: [], tripwires: [] },
  signed: [],
});

/** Every action that says something planned, by its name; a second way of it after a comma. */
export const everyPlannedDeed: Readonly<Record<string, EveryDeed>> = {
  keepAirOfDay: {
    before: async () => undefined,
    run: ({ desk, is }) => actions.keepAirOfDay(desk, is.sculpture, { air: '16' }),
  } as EveryDeed,
  addPlanned: {
    before: async () => undefined,
    run: (lived) => actions.addPlanned(lived.desk, 'task', task(lived)),
  },
  closeHotDay: {
    before: hotDay({ workEnded, watchKept }),
    run: ({ desk }, thing: string) => actions.closeHotDay(desk, thing, 'Steward'),
  } as EveryDeed,
  endHotWork: {
    before: hotDay({}),
    run: ({ desk }, thing: string) => actions.endHotWork(desk, thing, tick),
  } as EveryDeed,
  goOnWithHotWork: {
    before: hotDay({ workEnded }),
    run: ({ desk }, thing: string) => actions.goOnWithHotWork(desk, thing),
  } as EveryDeed,
  openHotDayAgain: {
    before: hotDay({ workEnded, watchKept, closed }),
    run: ({ desk }, thing: string) => actions.openHotDayAgain(desk, thing),
  } as EveryDeed,
  sayWatchKept: {
    before: hotDay({ workEnded }),
    run: ({ desk }, thing: string) =>
      actions.sayWatchKept(desk, thing, { by: 'Helper', own: { from: '08:00', until: '09:00' } }, tick),
  } as EveryDeed,
  editPlanned: {
    before: kept,
    run: ({ desk }, thing: string) => actions.editPlanned(desk, 'task', thing, { what: 'Clear both weep holes' }),
  } as EveryDeed,
  removePlanned: {
    before: kept,
    run: ({ desk }, thing: string) => actions.removePlanned(desk, 'task', thing),
  } as EveryDeed,
  replaceDecision: {
    before: async ({ desk, is }: LivedIn) => {
      const came = await actions.addPlanned(desk, 'decision', decided(is.sculpture, 'Go on waxing'));
      if (!came.ok) throw new Error(came.reason.code);
      return came.thing;
    },
    run: ({ desk, is }, old: string) =>
      actions.replaceDecision(desk, old, decided(is.sculpture, 'Strip and colour anew')),
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
export const onlyAskOfPlans: readonly string[] =
  'dueThings fireWatch momentHere airOfDay plannedAll plannedOf plannedOfCollection productStore tripwiresMet watchOfCampaign yearAround'.split(
    ' ',
  );
