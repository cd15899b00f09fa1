import type { Folder } from '../../device/folder';
import type { Desk, Outcome } from '../desk';
import { attempt, must, refuse } from '../outcome';
import { folderBeside, forgetHandle, holdFolder, onServer, pickedByPerson } from './folderAtHand';
import { forgetSegments, type Joined, joinedTo, type Stepped, setJoined } from './joined';
import { stepRefusal } from './reasonCodes';
import { type Stepping, step } from './step';

/** What switching on came to: the first step, or nothing where the person closed the window. */
export type SwitchedOn = Outcome<{ readonly stepped?: Stepped }>;

/** Keeps in step with the folder on the server that serves the app. Name and password are kept until the app is closed. */
export const switchOnServer = (
  desk: Desk,
  { account, password }: { readonly account: string; readonly password: string },
  stepping: Stepping = {},
): Promise<SwitchedOn> =>
  attempt(async () => {
    refuseInvented(desk);
    const folder = onServer(account.trim(), password);
    const name = new URL(folderBeside, location.href).host;
    return joinFolder(desk, folder, { way: 'server', name, account: account.trim() }, stepping);
  });

/** Keeps in step with a folder the person picks; from a tap. */
export const switchOnPicked = (desk: Desk, stepping: Stepping = {}): Promise<SwitchedOn> =>
  attempt(async () => {
    refuseInvented(desk);
    const picked = await pickedByPerson(desk);
    return picked ? joinFolder(desk, picked.folder, { way: 'picked', name: picked.name }, stepping) : {};
  });

/** Joins a folder at hand with a first step; where that is refused, nothing is switched on. Cut by the network, it stays on and goes on later. */
export const joinFolder = async (
  desk: Desk,
  folder: Folder,
  how: Pick<Joined, 'way' | 'name' | 'account'>,
  stepping: Stepping = {},
): Promise<{ readonly stepped: Stepped }> => {
  refuseInvented(desk);
  // Asked before anything is noted: a folder that does not answer is none to keep in step with.
  await folder.list('', stepping.signal);
  const before = await joinedTo(desk);
  holdFolder(desk, folder);
  // The same server once more, with name and password typed again, goes on where it was.
  if (before?.way === 'server' && how.way === 'server' && before.name === how.name)
    await setJoined(desk, { ...before, ...how });
  else {
    if (before) await forgetSegments(desk);
    const { device } = desk.store;
    await setJoined(desk, { ...how, writer: device, device, since: desk.now(), who: [] });
  }
  const outcome = await step(desk, stepping);
  if (!outcome.ok && refusedForGood.has(outcome.reason.code)) await switchedOff(desk);
  return must(outcome);
};

const refusedForGood = new Set(['step: other collection', 'step: several collections', 'step: invented']);

const refuseInvented = (desk: Desk): void => {
  if (desk.invented) refuse(stepRefusal('step: invented', {}));
};

/** Nothing goes to the folder any more; what is there stays there, and what came from it stays here. */
export const switchOff = (desk: Desk): Promise<Outcome> =>
  attempt(async () => {
    await switchedOff(desk);
    return {};
  });

const switchedOff = async (desk: Desk): Promise<void> => {
  holdFolder(desk, undefined);
  await setJoined(desk, undefined);
  await forgetHandle(desk);
  await forgetSegments(desk);
};
