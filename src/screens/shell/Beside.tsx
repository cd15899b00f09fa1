import { AskWho } from './AskWho';
import { PrintFoot } from './PrintFoot';

/** What goes along on every screen and shows nothing at first: no part of the start. */
export function Beside() {
  return (
    <>
      <AskWho />
      <PrintFoot />
    </>
  );
}
