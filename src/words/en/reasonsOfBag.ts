import type { BagReason } from '../../engine/bag';
import type { Sentences } from './sentence';

/** Why a bag is not taken. */
export const reasonsOfBag = {
  'bag: not a bag': () => 'This is no bag of a survey.',
  'bag: declaration': () =>
    'The file “bagit.txt” in it was altered: it does not say that this is a bag. Nothing was stored. Fetch the bag again from where it came from.',
  'bag: version': (s) =>
    `The bag says it is of BagIt version ${s.text('found')}, which this app does not read. Update the app, or have the bag made again.`,
  'bag: manifest line': (s) =>
    `Line ${s.text('line')} of “${s.text('file')}” in the bag is no checksum and file name. Nothing was stored. Fetch the bag again from where it came from.`,
  'bag: listed twice': (s) =>
    `“${s.text('file')}” in the bag lists “${s.text('path')}” twice. Nothing was stored. Fetch the bag again from where it came from.`,
  'bag: path': (s) =>
    `“${s.text('file')}” in the bag names “${s.text('path')}”, where no file of a bag lies. Nothing was stored; do not trust this file.`,
  'bag: info line': (s) =>
    `Line ${s.text('line')} of “bag-info.txt” in the bag cannot be read. Nothing was stored. Fetch the bag again from where it came from.`,
  'bag: text': (s) =>
    `“${s.text('file')}” in the bag is not plain text in UTF-8. Nothing was stored. Fetch the bag again from where it came from.`,
} satisfies Sentences<BagReason>;
