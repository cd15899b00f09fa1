import { spoken } from '../tongue';
import type { Params } from './sentence';

/** What the tablet and its browser say: what is wrong, and what to do. */
export const reasonsOfDevice = spoken('reasonsOfDevice', 'reasonsOfDevice', {
  'another tab writes': () =>
    'Another tab has this collection open and writes. This one only reads. Close the other, or take over here.',
  'another tab took over': () => 'Another tab has taken over. This one only reads now.',
  'newer database': (s) =>
    `The data on this device was written by a newer version of the app (${s.text('found')}, this one is ${s.text('here')}). Load the page again with a network.`,
  'update blocked': () =>
    'Another tab keeps an old version open. Close all other tabs of this app, then load this page again.',
  'reload needed': () => 'A newer version of the app is at work. Load this page again.',
  'device full': (s) =>
    `The device is full. Not stored: ${s.deed('deed')}. Free some space (photos or videos of other apps), then do it again. What was stored before is safe and can be carried out.`,
  'connection lost': (s) =>
    `The browser lost hold of the data. Not stored: ${s.deed('deed')}. Load the page again and do it once more.`,
  'data removed': (s) =>
    `The browser has cleared the data of this app: ${s.times('count', 'entry was', 'entries were')} here. Carry in your last survey file.`,
  'entries missing': (s) =>
    `${s.number('expected')} entries were stored and ${s.number('count')} are found. Carry the survey out now, and carry in your last file.`,
  'counts differ': (s) =>
    `The stored entries do not match their count (${s.number('count')} found, ${s.number('expected')} expected). Carry the survey out now and keep the file.`,
  'present state differs': (s) =>
    `${s.times('things', 'present state does', 'present states do')} not follow from the entries. They can be made anew; nothing is lost.`,
  'copied tablet': () =>
    'This device is a copy of another one. It has been given a device number of its own, so that the two are not taken for one.',
  'not kept: browser cannot': () =>
    'This browser cannot keep the app for use without a network. Open it in an up-to-date Safari, Chrome, Edge or Firefox.',
  'not kept: private window': () =>
    'In a private window the app cannot be kept for use without a network. Open it in an ordinary window.',
  'not kept: refused': (s) =>
    `The browser refused to keep the app for use without a network (${s.text('said')}). Load the page again with a network.`,
  'store failed': (s) =>
    `The browser refused to store it (${s.text('said')}). Not stored: ${s.deed('deed')}. Load the page again and do it once more.`,
  'no database': (s) =>
    `This browser does not let the app store anything (${s.text('said')}). Leave private browsing, or use another browser.`,
  'clocks apart': (s) =>
    `${s.times('count', 'entry bears', 'entries bear')} a day ahead of this device’s clock (up to ${s.day('day')}): one of the two clocks is wrong. Nothing is ordered by a clock; rounds keep the day that was confirmed.`,
  'clock out of step': (s) =>
    `The clock of this device says ${s.day('today')}, yet something was entered here on ${s.day('day')}: it was ahead then, or is behind now. Set it right. Nothing is ordered by it; rounds keep the day that was confirmed.`,
  'built upon': (s) =>
    `The import cannot be taken back: ${s.times('count', 'later entry rests', 'later entries rest')} on it. Undo those first.`,
  'no such import': () => 'This import is not known on this device, so it cannot be taken back here.',
  'photo erased': (s) =>
    `This picture was erased from the survey on ${s.day('day')} (“${s.text('reason')}”), so it is not taken in again. Take another one.`,
  'name erased': (s) =>
    `This person’s name was erased from the survey on ${s.day('day')} (“${s.text('reason')}”), so no name is taken for this surveyor again. Add a new surveyor to name somebody.`,
  'erasing stands': () =>
    'Something was erased by this, and what was erased is gone for good: it cannot be taken back.',
  'in step already': () =>
    'This is in the folder the devices keep in step with, so the next step would bring it back. Correct or remove it here instead: that reaches the others too.',
  'id twice': (s) =>
    `Two different contents bear the same entry number (${s.text('id')}). One of the files was changed by hand; ask for an unchanged one.`,
  'photo altered': () =>
    'A picture has come under the name of another and is not the one that name was made from. The one here stays; fetch the file again.',
  'photo not kept': () => 'The photo read back is not the one that was stored. Take it again.',
  'address not secure': () =>
    'This page was opened without https, so photos cannot be kept and the app cannot work offline. Open it by its https address.',
  'photo empty': () => 'The picture file is empty. Take or choose it again.',
  'not a picture': (s) =>
    `“${s.text('name')}” is not a picture this app knows. Choose a JPEG, PNG, WebP or HEIC picture.`,
  'photo too large': (s) =>
    `The picture is ${s.number('megabytes', 0)} MB; up to ${s.number('limit', 0)} MB can be kept. Take it at a smaller size.`,
  'drawing not taken': (s) =>
    `“${s.text('name')}” is an SVG drawing, which can carry a program in it. Save it as PNG or JPEG and choose that.`,
  'picture not shown': (s) => `This browser cannot show this picture (${s.text('mime')}). It is kept as it is.`,
  'HEIC not shown': () =>
    'This is a HEIC picture, whatever its name says, and this browser cannot show it. It is kept as it is. Set the camera to JPEG (“most compatible”) and take it once more if you can.',
  'picture cut': () =>
    'The file ends before the picture does, so its lower part is missing. It is kept as it is. Copy it again, or take it once more.',
  'picture cut, not shown': () =>
    'The file ends before the picture does, and too little is there to show. It is kept as it is. Copy it again, or take it once more.',
  'picture size untrue': () =>
    'The file does not hold as many pixels as it says, so it is not opened here. It is kept as it is. Save it again from the program that made it.',
  'photo not here': () =>
    'The photo itself is not on this device. Carry in a survey file that holds it, or measure on the device that took it.',
  'picture not opened': () =>
    'This browser does not open the photo, so its pixels cannot be told apart. Save it as JPEG and take it in again, or count dots where it is shown.',
  'picture cut, not worked': () =>
    'The file of this photo ends before the picture does; the missing part would be taken for surface. Copy the file again, or count dots on what is shown.',
  'pixels not at hand': () =>
    'This browser lets no page read the pixels of a photo. Count dots or trace the patches instead, or use an up-to-date Safari, Chrome, Edge or Firefox.',
  'pixels altered': () =>
    'A setting of this browser against being followed changes the pixels a page reads, so they cannot be told apart. Allow this page to read them, or count dots instead.',
  'pixels failed': (s) =>
    `The pixels of this photo could not be worked (${s.text('said')}). Close other apps and tabs and try again, or count dots instead.`,
  'pixels worked smaller': (s) =>
    `The photo has ${s.number('megapixels', 1)} million pixels and was worked at ${s.number('worked', 1)} million, as many as a tablet bears.`,
  'taps of the earlier photo': () => 'The spots of the earlier photo do not tell its green from its sound surface.',
  'taps of the later photo': () => 'The spots of the later photo do not tell its green from its sound surface.',
  'change within the fit': (s) =>
    `The photos may be out of place by ${s.percent('share')} of the width: an edge of green that moved by less is not taken for change. The range shows what twice that, and none, would make of it.`,
  'change not checked': () =>
    'Nobody has judged these pixels: light, wet and dirt change colours too. Look at each place before you say it has changed.',
  'change left out': (s) =>
    `${s.percent('share')} of the zone could not be told on one of the photos: glare, deep shade, or outside the earlier one.`,
  'location blanked': () => 'The place where the picture was taken was blanked in it before it was kept.',
  'no camera on the page': () =>
    'This browser shows no camera on a page. Take the photo with the tablet’s own camera instead.',
  'camera not allowed': () =>
    'The browser was told not to let this page use the camera. Allow it in the browser’s settings for this page, or take the photo with the tablet’s own camera.',
  'no camera here': () => 'This device has no camera that can be used. Choose a photo it already has.',
  'camera busy': (s) =>
    `The camera did not start (${s.text('said')}). Close other apps that use it and try again, or take the photo with the tablet’s own camera.`,
  'camera lost': () => 'The camera was taken away by another app. Open this view again.',
  'save cancelled': () => 'Not saved: the window was closed.',
  'save refused': (s) => `The device refused to save (${s.text('said')}). Try another way below.`,
  'way not here': () => 'This device cannot do it in this way. Choose another.',
  'bag worker failed': (s) =>
    `The part of the app that works on bags stopped. Nothing was changed here. Load the page again and try once more${s.text('said') && ` (the browser says: ${s.text('said')})`}.`,
  'bag of nothing': () => 'There is nothing in it yet: choose works that hold something, or record something first.',
  'no room for a bag': (s) =>
    `There is no room here for a bag of ${s.number('megabytes')} MB beside what lies here. Write it straight into a file where this device offers it, choose fewer works, or make room first.`,
  'bag not whole': (s) =>
    `The bag was written and does not read back as it was (“${s.text('path')}”), so it is not offered. Nothing was lost here. Prepare it again; if it stays so, this device’s storage may be failing.`,
  'asset missing': (s) => `A part of the app is missing (${s.text('name')}). Load the page again with a network.`,
} satisfies Readonly<Record<string, (s: Params) => string>>);
