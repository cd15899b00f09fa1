import type { BagReason } from '../../engine/bag';
import { spoken } from '../tongue';
import type { Sentences } from './sentence';

/** Why a bag is not taken. */
export const reasonsOfBag = spoken('reasonsOfBag', 'reasonsOfBag', {
  'bag: not a bag': () => 'This is no bag of a survey.',
  'bag: declaration': () =>
    'The file “bagit.txt” in it was altered: it does not say that this is a bag. Fetch the bag again from where it came from.',
  'bag: version': (s) =>
    `The bag says it is of BagIt version ${s.text('found')}, which this app does not read. Update the app, or have the bag made again.`,
  'bag: manifest line': (s) =>
    `Line ${s.text('line')} of “${s.text('file')}” in the bag is no checksum and file name. Fetch the bag again from where it came from.`,
  'bag: listed twice': (s) =>
    `“${s.text('file')}” in the bag lists “${s.text('path')}” twice. Fetch the bag again from where it came from.`,
  'bag: path': (s) =>
    `“${s.text('file')}” in the bag names “${s.text('path')}”, where no file of a bag lies. Do not trust this file.`,
  'bag: info line': (s) =>
    `Line ${s.text('line')} of “bag-info.txt” in the bag cannot be read. Fetch the bag again from where it came from.`,
  'bag: text': (s) =>
    `“${s.text('file')}” in the bag is not plain text in UTF-8. Fetch the bag again from where it came from.`,
  'bag: cut off': () =>
    'The bag does not end as a zip file does: it was cut off on its way, or something was hung on to it. Fetch the bag again from where it came from.',
  'bag: zip untrue': (s) =>
    `${s.text('path') === '' ? 'The zip file' : `The zip file, at “${s.text('path')}”,`} says different things of itself in different places. Fetch the bag again from where it came from; if it stays so, do not trust this file.`,
  'bag: zip in parts': () =>
    'This is one part of a zip file that was cut into several. Put the parts together with the program that made them, and open the whole.',
  'bag: encrypted': (s) =>
    `“${s.text('path')}” in the bag is locked with a password. Unpack it, pack it again without a password, and open that.`,
  'bag: packed otherwise': (s) =>
    `“${s.text('path')}” in the bag is packed in a way this app does not read. Unpack it, pack it again as an ordinary zip file, and open that.`,
  'bag: not unpacked': (s) =>
    `“${s.text('path')}” in the bag does not unpack to what the bag says it holds. Fetch the bag again from where it came from.`,
  'bag: too many files': (s) =>
    `The bag says it holds ${s.number('count')} files; up to ${s.number('most')} are read. Have the works carried out in several bags.`,
  'bag: file too large': (s) =>
    `“${s.text('path')}” in the bag is ${s.number('megabytes')} MB; up to ${s.number('most')} MB are read. No survey of this app holds such a file.`,
  'bag: too large': (s) =>
    `The bag unpacks to ${s.number('gigabytes')} GB; up to ${s.number('most')} GB are read. Have the works carried out in several bags.`,
  'bag: swells': (s) =>
    `“${s.text('path')}” in the bag would swell to ${s.number('times')} times its size when unpacked. Do not trust this file.`,
  'bag: name': (s) =>
    `The bag holds a file that belongs in no survey (“${s.text('path')}”). If somebody put it there in good faith, have it taken out; otherwise do not trust this file.`,
  'bag: name twice': (s) =>
    `The bag holds “${s.text('path')}” twice, so it is not sure which of the two counts. Fetch the bag again from where it came from.`,
  'bag: no declaration': () =>
    'The file “bagit.txt” is missing from the bag. Fetch the whole bag again from where it came from.',
  'bag: other manifest': (s) =>
    `The bag holds a list of check sums this app does not read (“${s.text('path')}”). Have it made with SHA-256 only, or carried out of the app again.`,
  'bag: fetch': () =>
    'The bag leaves some of its files to be fetched from the network, which this app does not do. Have the bag completed where it came from.',
  'bag: no manifest': () =>
    'The list of check sums (“manifest-sha256.txt”) is missing from the bag, so nobody can say whether it is whole. Fetch the bag again from where it came from.',
  'bag: no survey': () =>
    'There is no survey in this bag (“data/survey.json”). Choose a bag that was carried out of this app.',
  'bag: file missing': (s) =>
    `“${s.text('path')}” is listed in “${s.text('file')}” and is not in the bag. Fetch the whole bag again from where it came from.`,
  'bag: file not listed': (s) =>
    `“${s.text('path')}” is in the bag and not on its list, so somebody added it. Fetch the bag again from where it came from.`,
  'bag: file altered': (s) =>
    `“${s.text('path')}” in the bag is not the file that was put into it: its check sum is another. Fetch the bag again from where it came from.`,
  'bag: photo name': (s) =>
    `The picture “${s.text('path')}” in the bag is named after another picture. Fetch the bag again from where it came from.`,
  'bag: no picture': (s) =>
    `“${s.text('path')}” in the bag is called a picture and is none this app knows. Do not trust this file.`,
  'bag: count differs': (s) =>
    `The bag says it holds ${s.number('bytes')} bytes in ${s.number('files')} files, and holds others. Fetch the whole bag again from where it came from.`,
  'bag: more faults': (s) => `And ${s.times('count', 'more fault', 'more faults')} of this sort.`,
} satisfies Sentences<BagReason>);
