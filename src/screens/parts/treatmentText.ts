/** How entries of the logbook are told, for screens; papers tell them in the same words. */
export { airText, whenDone, whereDone, whoDid, withWhat } from '../../words';
