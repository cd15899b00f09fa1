import type { Reason } from '../engine/record';

/** Every reason the device gives, with the names of its parameters. The sentences live in src/words/. */
export const deviceReasonCodes = {
  /** Another tab of this browser writes; this one only reads. */
  'another tab writes': [],
  /** Another tab took over while this one was open. */
  'another tab took over': [],
  /** The database was written by a newer version of the app. */
  'newer database': ['here', 'found'],
  /** Another tab keeps an old version of the database open. */
  'update blocked': [],
  /** A newer version of the app opened the database: this page must be loaded again. */
  'reload needed': [],
  /** The tablet is full; nothing of this deed was stored. `deed` is the code of the deed's name, or ''. */
  'device full': ['deed'],
  /** The connection to the database was lost, twice. */
  'connection lost': ['deed'],
  /** The browser cleared the data: `count` entries were here. */
  'data removed': ['count'],
  /** The database holds fewer entries than were stored. */
  'entries missing': ['count', 'expected'],
  /** The running count or checksum does not match what is stored. */
  'counts differ': ['count', 'expected'],
  /** Present states that do not follow from the entries: they can be made anew. */
  'present state differs': ['things'],
  /** Anything else the browser refused, in its own words. */
  'store failed': ['deed', 'said'],
  /** This browser has no IndexedDB, or refuses it. */
  'no database': ['said'],
  /** Not a fault: this tablet is a copy of another one, and entries made here carry a new device name from now on. */
  'copied tablet': [],
  /** Not a fault: entries of a file are dated ahead of this device's clock. */
  'clocks apart': ['count', 'day'],
  /** Not a fault: what was last entered here is dated ahead of the clock as it stands now. */
  'clock out of step': ['day', 'today'],
  /** The import cannot be taken back: `count` later entries rest on it. */
  'built upon': ['count'],
  /** The batch to take out is not known here. */
  'no such import': [],
  /** The picture was erased before; its bytes are refused for good. */
  'photo erased': ['day', 'reason'],
  /** The person's name was erased before. */
  'name erased': ['day', 'reason'],
  /** What was erased cannot be brought back, nor the erasure changed. */
  'erasing stands': [],
  /** What is to be taken out lies in a folder shared with other devices. */
  'in step already': [],
  /** An entry id is here already with another content. */
  'id twice': ['id'],
  /** Bytes handed in under a hash that is not theirs, while others lie here under it. */
  'photo altered': [],
  /** The photo read back was not what was written. */
  'photo not kept': [],
  /** The address is not secure (no https): photos cannot be named by their hash, nor the app work offline. */
  'address not secure': [],
  'photo empty': [],
  /** The first bytes are of no picture this app knows. */
  'not a picture': ['name'],
  /** An SVG: a program as much as a picture. */
  'drawing not taken': ['name'],
  'photo too large': ['megabytes', 'limit'],
  /** A picture, but this browser cannot show it: kept, without thumbnail. */
  'picture not shown': ['mime'],
  'HEIC not shown': ['mime'],
  /** The file ends before the picture does: kept, shown as far as it goes, or not at all. */
  'picture cut': [],
  'picture cut, not shown': [],
  /** It holds fewer or more pixels than it says: kept, not opened. */
  'picture size untrue': [],
  /** Of pixels: the photo's bytes are not on this device. */
  'photo not here': [],
  'picture not opened': [],
  /** What is missing of it is shown grey, and would be taken for surface. */
  'picture cut, not worked': [],
  /** This browser gives no way to read the pixels of a picture beside the page. */
  'pixels not at hand': [],
  /** What is read is not what was drawn: a setting against being followed. */
  'pixels altered': [],
  'pixels failed': ['said'],
  /** A photo of more pixels than are worked. */
  'pixels worked smaller': ['megapixels', 'worked'],
  'taps of the earlier photo': [],
  'taps of the later photo': [],
  'change within the fit': ['share'],
  'change not checked': [],
  'change left out': ['share'],
  'location blanked': [],
  /** This browser shows no camera on a page. */
  'no camera on the page': [],
  'camera not allowed': [],
  'no camera here': [],
  /** Another app has it, or the browser failed to start it; in its own words. */
  'camera busy': ['said'],
  'camera lost': [],
  /** The person closed the save or share sheet: no error. */
  'save cancelled': [],
  'save refused': ['said'],
  'way not here': ['way'],
  /** The part of the app that writes and reads bags stopped, in its own words. */
  'bag worker failed': ['said'],
  'bag of nothing': [],
  /** A bag of `megabytes` does not fit beside what lies here. */
  'no room for a bag': ['megabytes'],
  /** What was written reads otherwise than it was written. */
  'bag not whole': ['path'],
  'asset missing': ['name'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type DeviceReasonCode = keyof typeof deviceReasonCodes;

type ParamsOf<C extends DeviceReasonCode> = { readonly [P in (typeof deviceReasonCodes)[C][number]]: string | number };

export const deviceReason = <C extends DeviceReasonCode>(code: C, params: ParamsOf<C>): Reason => ({ code, params });
