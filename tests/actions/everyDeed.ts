import type { Desk } from '../../src/actions';
import * as actions from '../../src/actions';
import { memoryFolder } from '../../src/device/folder';
import { sha256 } from '../../src/device/hash';
import { database } from '../../src/device/store/database';
import { writeSurvey } from '../../src/engine/exchange';
import { writeSelector } from '../../src/engine/photo';
import { asFile, asZipped, bagged, picture as drawn, hashOf, payloadOf } from '../files/bags';
import { zipOf } from '../files/zipped';
import { everyPlannedDeed, onlyAskOfPlans } from './everyPlannedDeed';
import type { LivedIn } from './livedIn';
import { carryIn, elsewhere, onLadder, picture, square } from './livedIn';

/** A deed and what it needs done before; what that gives is handed on. */
export interface EveryDeed {
  before(lived: LivedIn): Promise<unknown>;
  run(lived: LivedIn, given: never): Promise<unknown>;
  /** Bytes are kept in a step of their own before anything is said of them. */
  readonly keepsBytes?: true;
  /** It is done in steps, each of them whole: what was done before the fault stays. */
  readonly inSteps?: true;
}

const deed = (run: (lived: LivedIn) => Promise<unknown>, more: Partial<EveryDeed> = {}): EveryDeed => ({
  before: async () => undefined,
  run,
  ...more,
});
const after = <T>(
  before: (lived: LivedIn) => Promise<T>,
  run: (lived: LivedIn, given: T) => Promise<unknown>,
  more: Partial<EveryDeed> = {},
): EveryDeed => ({ before, run: run as EveryDeed['run'], ...more });

const must = async <T extends object>(outcome: Promise<actions.Outcome<T>>): Promise<T> => {
  const came = await outcome;
  if (!came.ok) throw new Error(came.reason.code);
  return came;
};

const part = square(0.2);
const green = 'green-spots';
const area = { m2: 2, low: 1.8, high: 2.2, method: 'typed' } as const;
const zone = { name: 'foot', area, substrate: 'bronze', exposure: ['open'], reach: 'ground' };
const bytes = { keepsBytes: true } as const;
const scale = { a: [0.1, 0.1], b: [0.8, 0.8], metres: 2 } as const;

const otherWork = (desk: Desk) => {
  const thing = 'sculpture/01a00000-0000-7000-8000-0000000000aa';
  const body = { number: '9', title: 'Of another tablet' };
  const id = '01a00000-0000-7000-8000-0000000000ab';
  return { collection: desk.collection, entries: [elsewhere({ id, thing, kind: 'sculpture', within: thing, body })] };
};
const seenFile = async ({ desk }: LivedIn): Promise<actions.CarryPreview> => {
  const { collection, entries } = otherWork(desk);
  const read = await actions.openSurveyFile(desk, new File([writeSurvey(collection, entries)], 'x.survey.json'));
  if (!read.ok) throw new Error(read.reason.code);
  return read.preview;
};

const seenBag = async ({ desk }: LivedIn): Promise<actions.CarryPreview> => {
  const { collection, entries } = otherWork(desk);
  const photos = [drawn(1), drawn(2)];
  const within = entries[0]!.thing;
  const spoken = photos.map((photo, i) => {
    const sha256 = hashOf(photo);
    const body = { sculpture: within, sha256, mime: 'image/jpeg', bytes: photo.length, role: 'other' };
    const id = `01a00000-0000-7000-8000-0000000000b${i}`;
    return elsewhere({ id, thing: `photo/${sha256}`, kind: 'photo', within, body, n: 2 + i });
  });
  const zip = zipOf(asZipped(bagged(payloadOf(collection, [...entries, ...spoken], photos)), 'bag/'));
  const read = await actions.openSurveyFile(desk, asFile(zip));
  if (!read.ok) throw new Error(read.reason.code);
  return read.preview;
};

const dots = ({ is }: LivedIn): actions.MeasureOf => ({ photo: is.photo, about: is.a, kind: green, way: 'dots' });
const traced = ({ is }: LivedIn): actions.MeasureOf => ({ photo: is.photo, about: is.a, kind: green, way: 'traced' });
const byPhoto = ({ is }: LivedIn): actions.MeasureOf => ({ photo: is.photo, about: is.a, kind: green, way: 'photo' });
const tracedTouches = {
  part,
  working: { patches: { type: 'SvgSelector' as const, value: writeSelector(square(0.25)) } },
  corners: [],
};

/** A photo whose bytes are no longer those of its name, and one nothing speaks of; looked through, so that both are known. */
const harmed = async ({ desk, store, is }: LivedIn) => {
  const db = database(store.name);
  await db.open();
  await db.photoBytes.put({ sha256: is.loose.slice(6), mime: 'image/jpeg', bytes: new Uint8Array([9]).buffer });
  db.close();
  const stray = new Uint8Array([1, 2, 3]).buffer;
  await store.keepPhoto({ sha256: await sha256(stray), mime: 'image/jpeg', bytes: stray });
  await must(actions.checkStore(desk));
};

const allJudged = async ({ desk, is }: LivedIn) => {
  await must(actions.leaveZone(desk, is.now, is.a, { how: 'next' }));
  for (const each of [is.b, is.d]) {
    await must(actions.touchZone(desk, is.now, each, { do: 'open', key: 'green-spots/metal' }));
    await must(actions.touchZone(desk, is.now, each, { do: 'cover', coverage: onLadder }));
    await must(actions.leaveZone(desk, is.now, each, { how: 'next' }));
  }
};
const elevenPatches = async ({ desk, is }: LivedIn) => {
  for (let i = 1; i < actions.patchesInCheck; i++)
    await must(actions.sayPatch(desk, is.surveyor, { truth: i / 20, said: onLadder }));
};

/** Every action that writes, by its name; a second way of it after a comma. */
export const everyDeed: Readonly<Record<string, EveryDeed>> = {
  ...everyPlannedDeed,
  acceptImport: after(seenFile, ({ desk }, preview) => actions.acceptImport(desk, preview)),
  'acceptImport, of a bag': after(seenBag, ({ desk }, preview) => actions.acceptImport(desk, preview), {
    ...bytes,
    inSteps: true,
  }),
  addElevation: deed(({ desk, is }) => actions.addElevation(desk, is.sculpture, 'east', picture('new')), bytes),
  addInsert: deed(({ desk, is }) =>
    actions.addInsert(desk, is.sculpture, { material: 'ivory', count: 1, removable: 'no' }),
  ),
  addInterpretations: deed(({ desk, is }) =>
    actions.addInterpretations(desk, is.sculpture, {
      by: 'X',
      source: 'page',
      statements: [{ statement: 'Damp' }, { statement: 'Salt', about: is.sculpture }],
    }),
  ),
  addInterpretation: deed(({ desk, is }) =>
    actions.addInterpretation(desk, is.sculpture, { statement: 'Damp', by: 'X' }),
  ),
  addReading: deed(({ desk, is }) =>
    actions.addReading(desk, is.sculpture, { ...is.conditions, date: '2026-10-15', values: is.values, zone: is.b }),
  ),
  addSculpture: deed(({ desk }) =>
    actions.addSculpture(desk, { number: '2', title: 'New' }, { place: 'Gate', access: 'Key' }),
  ),
  addSentinel: deed(({ desk, is }) =>
    actions.addSentinel(desk, is.sculpture, { zone: is.b, which: 'best', find: 'rim' }),
  ),
  addStation: deed(({ desk, is }) => actions.addStation(desk, is.sculpture, { aim: 'rim' })),
  addStations: deed(({ desk, is }) => actions.addStations(desk, is.sculpture, [{ aim: 'rim' }, { aim: 'foot' }])),
  addSurveyor: deed(({ desk }) => actions.addSurveyor(desk, { role: 'Intern', name: 'Bo Other' })),
  addZone: deed(({ desk, is }) => actions.addZone(desk, is.sculpture, zone)),
  carriedOut: deed(({ desk }) => actions.carriedOut(desk, { what: 'survey', name: 'x', entries: 1, photos: 0 })),
  changeMapDraft: deed(({ desk, is }) =>
    actions.changeMapDraft(desk, is.elevation, () => ({ doing: 'scale', ends: [[0.1, 0.1]] })),
  ),
  checkStore: deed(({ desk }) => actions.checkStore(desk)),
  checkWhenDue: deed(({ desk }) => actions.checkWhenDue(desk)),
  clearClass: deed(({ desk, is }) => actions.clearClass(desk, is.last, is.a)),
  clearStray: after(harmed, ({ desk }) => actions.clearStray(desk), { inSteps: true }),
  closePersonCheck: deed(({ desk, is }) => actions.closePersonCheck(desk, is.personCheck, { by: 'Engineer' })),
  closeRound: after(allJudged, ({ desk, is }) => actions.closeRound(desk, is.now)),
  commitChanges: deed(({ desk, is }) =>
    actions.commitChanges(desk, { code: 'deed: sculpture edited', params: {} }, [
      { thing: is.sculpture, patch: { note: 'x' } },
      { thing: is.treatment, gone: true },
    ]),
  ),
  editAgreedColour: deed(({ desk, is }) => actions.editAgreedColour(desk, is.agreedColour, { name: 'Dark brown' })),
  editInsert: deed(({ desk, is }) => actions.editInsert(desk, is.insert, { count: 3 })),
  editReading: deed(({ desk, is }) => actions.editReading(desk, is.reading, { note: 'x' })),
  editSculpture: deed(({ desk, is }) =>
    actions.editSculpture(desk, is.sculpture, { note: 'x' }, { place: 'Elsewhere' }),
  ),
  editSentinel: deed(({ desk, is }) => actions.editSentinel(desk, is.sentinel, { find: 'third fold' })),
  editStation: deed(({ desk, is }) => actions.editStation(desk, is.station, { aim: 'the rim' })),
  editSurveyor: deed(({ desk, is }) => actions.editSurveyor(desk, is.surveyor, { role: 'Curator', name: 'Ann Lee' })),
  editTreatment: deed(({ desk, is }) => actions.editTreatment(desk, is.treatment, { note: 'x' })),
  editZone: deed(({ desk, is }) => actions.editZone(desk, is.a, { name: 'x', area })),
  eraseName: deed(({ desk, is }) =>
    actions.eraseName(desk, is.surveyor, { reason: 'Asked for', alsoIn: [is.interpretation] }),
  ),
  erasePhoto: deed(({ desk, is }) => actions.erasePhoto(desk, is.loose, { reason: 'A passer-by' })),
  expectLookPhoto: deed(({ desk, is }) => actions.expectLookPhoto(desk, is.look)),
  expectPhoto: deed(({ desk, is }) => actions.expectPhoto(desk, { sculpture: is.sculpture, station: is.station })),
  expectShot: deed(({ desk, is }) =>
    actions.expectShot(desk, { sculpture: is.sculpture, round: null }, { of: 'station', thing: is.station }),
  ),
  freePhotos: deed(
    ({ desk, is }) =>
      actions.freePhotos(desk, [is.loose.slice(6), is.photo.slice(6)], {
        name: 'bag',
        day: '2026-10-15',
        photos: [is.loose.slice(6), is.photo.slice(6)],
      }),
    { inSteps: true },
  ),
  joinZones: deed(({ desk, is }) => actions.joinZones(desk, [is.a, is.b], { name: 'both' })),
  joinFolder: deed(({ desk }) => actions.joinFolder(desk, memoryFolder(), { way: 'picked', name: 'shared' }), {
    inSteps: true,
  }),
  judgeDot: after(
    (lived) => must(actions.layDots(lived.desk, dots(lived), part, 49)),
    (lived) => actions.judgeDot(lived.desk, dots(lived), 'answers', 0, 'y'),
  ),
  giveToRound: deed(({ desk, is }) => actions.giveToRound(desk, [is.photo, is.loose], is.last)),
  takeOverList: deed(({ desk, is }) =>
    actions.takeOverList(
      desk,
      ['2018', '2019'].map((date) => ({ sculpture: is.sculpture, zones: [is.a], type: 'wax', date })),
      'Wax book',
    ),
  ),
  takeOverReport: deed(({ desk, is }) =>
    actions.takeOverReport(desk, is.sculpture, { by: 'Conservator', date: '1987', source: 'Report' }, [
      { statement: 'Wax thin', about: is.a },
      { statement: 'Armature rusting' },
    ]),
  ),
  keepMeasure: after(
    (lived) => must(actions.keepTouches(lived.desk, traced(lived), tracedTouches)),
    (lived) => actions.keepMeasure(lived.desk, traced(lived)),
  ),
  keepOutlineDrawn: after(
    ({ desk, is }) =>
      must(
        actions.changeMapDraft(desk, is.elevation, () => ({
          doing: 'outline',
          zone: is.c,
          closed: [],
          corners: square(0.4)[0]!,
        })),
      ),
    ({ desk, is }) => actions.keepOutlineDrawn(desk, is.elevation),
  ),
  keepPhoto: deed(({ desk, is }) => actions.keepPhoto(desk, is.sculpture, picture('new'), 'other'), bytes),
  keepScaleDrawn: after(
    ({ desk, is }) =>
      must(actions.changeMapDraft(desk, is.elevation, () => ({ doing: 'scale', ends: [scale.a, scale.b] }))),
    ({ desk, is }) => actions.keepScaleDrawn(desk, is.elevation, 2),
  ),
  keepTouches: deed((lived) => actions.keepTouches(lived.desk, traced(lived), tracedTouches)),
  keepWalkSetting: deed(({ desk }) => actions.keepWalkSetting(desk, { wet: 'damp', planned: false })),
  layCheckDots: after(
    (lived) =>
      must(actions.keepTouches(lived.desk, byPhoto(lived), { part, working: { green: [], sound: [] }, corners: [] })),
    (lived) => actions.layCheckDots(lived.desk, byPhoto(lived), { maskShare: 0.25, inMask: 8, outsideMask: 22 }),
  ),
  layDots: deed((lived) => actions.layDots(lived.desk, dots(lived), part, 49)),
  leaveEyeCheck: deed(({ desk, is }) => actions.leaveEyeCheck(desk, is.surveyor)),
  leaveZone: deed(({ desk, is }) => actions.leaveZone(desk, is.now, is.a, { how: 'next' })),
  makeAnew: deed(({ desk }) => actions.makeAnew(desk), { inSteps: true }),
  noLookPhoto: deed(({ desk }) => actions.noLookPhoto(desk)),
  noPhotoExpected: deed(({ desk }) => actions.noPhotoExpected(desk)),
  noteZone: deed(({ desk, is }) => actions.noteZone(desk, is.now, is.d)),
  openPersonCheck: deed(({ desk, is }) => actions.openPersonCheck(desk, is.sculpture, { what: 'cracks', zone: is.a })),
  orderStations: deed(({ desk, is }) => actions.orderStations(desk, is.sculpture, [is.other, is.station])),
  orderZones: deed(({ desk, is }) =>
    actions.orderZones(desk, is.sculpture, [is.d, is.c, is.b, is.a], { relettered: true }),
  ),
  photoForLook: deed(({ desk, is }) => actions.photoForLook(desk, is.look, picture('new')), bytes),
  photoForShot: deed(
    ({ desk, is }) =>
      actions.photoForShot(
        desk,
        { sculpture: is.sculpture, round: null },
        { of: 'station', thing: is.station },
        picture('new'),
        'sun',
      ),
    bytes,
  ),
  photoForStation: deed(
    ({ desk, is }) => actions.photoForStation(desk, is.sculpture, { station: is.station }, picture('new')),
    bytes,
  ),
  photoForZone: deed(({ desk, is }) => actions.photoForZone(desk, is.now, is.a, 'zone', picture('new')), {
    ...bytes,
    inSteps: true,
  }),
  photosFound: after(
    ({ desk, is }) => {
      const loose = is.loose.slice(6);
      return must(actions.freePhotos(desk, [loose], { name: 'bag', day: '2026-10-15', photos: [loose] }));
    },
    ({ desk }) => actions.photosFound(desk, [picture('other'), picture('three')]),
    { ...bytes, inSteps: true },
  ),
  rateAgain: after(allJudged, ({ desk, is }) => actions.rateAgain(desk, is.now, onLadder)),
  recordAllClear: deed(({ desk, is }) =>
    actions.recordAllClear(desk, is.sculpture, [is.a, is.b], { wet: 'dry', planned: true }),
  ),
  recordLook: deed(({ desk, is }) =>
    actions.recordLook(desk, is.sculpture, { zone: is.b, result: 'clear', wet: 'dry', planned: true }),
  ),
  recordTreatment: deed(({ desk, is }) =>
    actions.recordTreatment(desk, is.sculpture, { zones: [is.b], type: 'wax', date: '2025' }),
  ),
  removeAgreedColour: deed(({ desk, is }) => actions.removeAgreedColour(desk, is.agreedColour)),
  removeElevation: deed(({ desk, is }) => actions.removeElevation(desk, is.elevation)),
  removeEyeCheck: after(
    async (lived) => {
      await elevenPatches(lived);
      return (await must(actions.sayPatch(lived.desk, lived.is.surveyor, { truth: 0.6, said: onLadder }))).made ?? '';
    },
    ({ desk }, check) => actions.removeEyeCheck(desk, check),
  ),
  removeInsert: deed(({ desk, is }) => actions.removeInsert(desk, is.insert)),
  removeInterpretation: deed(({ desk, is }) => actions.removeInterpretation(desk, is.interpretation)),
  removeMeasure: after(
    async (lived) => {
      await must(actions.keepTouches(lived.desk, traced(lived), tracedTouches));
      return (await must(actions.keepMeasure(lived.desk, traced(lived)))).measure;
    },
    ({ desk }, measure) => actions.removeMeasure(desk, measure),
  ),
  removeOutline: deed(({ desk, is }) => actions.removeOutline(desk, is.outline)),
  removePhoto: deed(({ desk, is }) => actions.removePhoto(desk, is.loose)),
  removePhotoFit: deed(({ desk, is }) => actions.removePhotoFit(desk, is.photo, is.onto)),
  removeReading: deed(({ desk, is }) => actions.removeReading(desk, is.reading)),
  removeRunOff: deed(({ desk, is }) => actions.removeRunOff(desk, is.runOff)),
  removeSculpture: deed(({ desk, is }) => actions.removeSculpture(desk, is.sculpture)),
  removeSentinel: deed(({ desk, is }) => actions.removeSentinel(desk, is.sentinel)),
  removeStation: deed(({ desk, is }) => actions.removeStation(desk, is.other)),
  removeTreatment: deed(({ desk, is }) => actions.removeTreatment(desk, is.treatment)),
  removeZone: after(
    ({ desk, is }) => must(actions.addZone(desk, is.sculpture, zone)),
    ({ desk }, added) => actions.removeZone(desk, added.zone),
  ),
  renameCollection: after(
    ({ desk }) => must(actions.setUpCollection(desk, { name: 'G', role: 'Curator' })),
    ({ desk }) => actions.renameCollection(desk, 'Garden'),
  ),
  reopenRound: deed(({ desk, is }) => actions.reopenRound(desk, is.last)),
  sayApart: deed(({ desk, is }) => actions.sayApart(desk, is.elsewhere, is.now)),
  sayOne: deed(({ desk, is }) => actions.sayOne(desk, is.elsewhere, is.now)),
  sayPatch: after(elevenPatches, ({ desk, is }) => actions.sayPatch(desk, is.surveyor, { truth: 0.6, said: onLadder })),
  setAccess: deed(({ desk, is }) => actions.setAccess(desk, is.sculpture, 'No key')),
  setAgreedColour: deed(({ desk, is }) => actions.setAgreedColour(desk, is.sculpture, { ...is.card, name: 'Black' })),
  setClass: deed(({ desk, is }) => actions.setClass(desk, is.last, is.b, { condition: 3, setBy: 'X' })),
  setClimate: deed(({ desk }) =>
    actions.setClimate(desk, { temperature: 9.5, humidity: 79, so2: 2, chloride: 20, from: 'invented' }),
  ),
  setDamagedAside: after(harmed, ({ desk }) => actions.setDamagedAside(desk), { inSteps: true }),
  setElevationScale: deed(({ desk, is }) =>
    actions.setElevationScale(desk, is.elevation, { ...scale, a: [...scale.a], b: [...scale.b] }),
  ),
  setElevationStation: deed(({ desk, is }) => actions.setElevationStation(desk, is.elevation, is.station)),
  holdTyped: deed(({ desk }) =>
    actions.holdTyped(desk, 'note', { at: desk.now(), where: '/', title: '', values: { note: 'Half a word' } }),
  ),
  forgetTyped: deed(({ desk }) => actions.forgetTyped(desk, 'note')),
  setHoldRules: deed(({ desk }) => actions.setHoldRules(desk, { returnLevel: 0.03, chance: 0.25 })),
  'editInsert, its value': deed(({ desk, is }) =>
    actions.editInsert(desk, is.insert, {}, { minor: 200, currency: 'EUR' }),
  ),
  setMeasuringPlace: deed(({ desk, is }) => actions.setMeasuringPlace(desk, is.photo, is.a, { kind: green })),
  setObliquity: deed(({ desk, is }) => actions.setObliquity(desk, is.outline, 2)),
  setOutline: deed(({ desk, is }) => actions.setOutline(desk, is.elevation, is.c, square(0.4))),
  setPhotoFit: deed(({ desk, is }) => {
    const pairs = [0.1, 0.3, 0.5, 0.9].map((x) => ({ from: [x, x * x], onto: [x, x * x] }) as const);
    return actions.setPhotoFit(desk, { photo: is.onto, onto: is.photo, kind: 'similarity', pairs });
  }),
  setPlace: deed(({ desk, is }) => actions.setPlace(desk, is.sculpture, 'By the gate')),
  setRunOff: deed(({ desk, is }) => actions.setRunOff(desk, is.b, is.c)),
  setScale: deed(({ desk }) => actions.setScale(desk, { hazards: { [green]: 0.8 }, actionLevel: 75 })),
  setStandHere: deed(({ desk, is }) => actions.setStandHere(desk, is.station, picture('new')), bytes),
  setUpCollection: deed(({ desk }) => actions.setUpCollection(desk, { name: 'G', role: 'Curator', personName: 'Bo' })),
  settle: deed(async ({ desk, is, store }) => {
    const { heads } = (await store.current(is.treatment)) ?? { heads: [''] };
    return actions.settle(desk, is.treatment, { version: heads[0] ?? '' });
  }),
  skipAskingAgain: after(allJudged, ({ desk, is }) => actions.skipAskingAgain(desk, is.now)),
  sortPhoto: deed(({ desk, is }) => actions.sortPhoto(desk, is.loose, { zone: is.a, role: 'zone' })),
  splitZone: deed(({ desk, is }) =>
    actions.splitZone(desk, is.a, [
      { name: 'one', share: 0.25 },
      { name: 'two', share: 0.75 },
    ]),
  ),
  startEyeCheck: deed(({ desk, is }) => actions.startEyeCheck(desk, is.surveyor)),
  startRound: deed(({ desk, is }) =>
    actions.startRound(desk, is.sculpture, {
      type: 'annual',
      date: '2026-10-15',
      wet: 'dry',
      washed: 'after wash',
      ownEye: true,
    }),
  ),
  step: after(
    async ({ desk, is }) => {
      await actions.joinFolder(desk, memoryFolder(), { way: 'picked', name: 'shared' });
      await must(actions.setPlace(desk, is.sculpture, 'By the gate'));
    },
    ({ desk }) => actions.step(desk),
    { inSteps: true },
  ),
  switchOff: after(
    ({ desk }) => actions.joinFolder(desk, memoryFolder(), { way: 'picked', name: 'shared' }),
    ({ desk }) => actions.switchOff(desk),
    { inSteps: true },
  ),
  takeBackDot: after(
    async (lived) => {
      await must(actions.layDots(lived.desk, dots(lived), part, 49));
      await must(actions.judgeDot(lived.desk, dots(lived), 'answers', 0, 'y'));
    },
    (lived) => actions.takeBackDot(lived.desk, dots(lived), 'answers', 0),
  ),
  takeBackPatch: after(elevenPatches, ({ desk, is }) => actions.takeBackPatch(desk, is.surveyor)),
  takeMany: deed(
    ({ desk, is }) =>
      actions.takeMany(desk, is.sculpture, [picture('m1'), picture('m2')], { heard: () => undefined }).then((taken) => {
        const problem = taken.each.find((one) => one.problem)?.problem;
        return problem ? { ok: false, reason: problem } : { ok: true };
      }),
    { ...bytes, inSteps: true },
  ),
  touchZone: deed(({ desk, is }) => actions.touchZone(desk, is.now, is.a, { do: 'severity', severity: 'slight' })),
  undoImport: after(
    ({ desk }) => carryIn(desk, otherWork(desk).entries),
    ({ desk }, import_) => actions.undoImport(desk, import_),
  ),
  'undoImport, of a bag': after(
    async (lived) => (await must(actions.acceptImport(lived.desk, await seenBag(lived)))).deed,
    ({ desk }, import_) => actions.undoImport(desk, import_),
  ),
  undoInRound: deed(({ desk, is }) => actions.undoInRound(desk, is.now)),
  'undoInRound, of a zone left': after(
    ({ desk, is }) => must(actions.leaveZone(desk, is.now, is.a, { how: 'next' })),
    ({ desk, is }) => actions.undoInRound(desk, is.now),
  ),
  'undoLast, of an import': after(
    ({ desk }) => carryIn(desk, otherWork(desk).entries),
    ({ desk }) => actions.undoLast(desk),
  ),
  undoLast: after(
    ({ desk, is }) => must(actions.leaveZone(desk, is.now, is.a, { how: 'next' })),
    ({ desk }) => actions.undoLast(desk),
  ),
};

/** They read, or work out, and write nothing but what can be worked out again. */
export const onlyAsk: readonly string[] = [
  ...onlyAskOfPlans,
  'answersOf aroundTheWork askedAgain bagSize cardsToPrint changeMapOf climateSet collectionInsights collectionState colourAt elevationsOf',
  'erasedPhoto erasedSoFar eyeCheckUnderWay eyesOf findingsTable firmnessOf inStepOf freeableWorks goOnWorkingOut insightsOf interpretationsOf',
  'lastChecked lastDeed lastFiles lastFilesOf lookPhotoExpected mapDraft maskOf measureAtHand measuresOf measuringOf namesFound needList',
  'rememberedAnew rememberedVersion openPersonChecks openSurveyFile ownHoldRules ownScale patrolWalk persistenceWanted photoAway photosInBag photoExpected photoSeriesOf photoUrl',
  'daysOfPhotos listText worksHere photosOfWork photosOfZone pixelsUnderWay prepareBag prepareCalendar prepareSurvey roundScore roundSetting roundView roundsThatMayBeOne roundsUnderWay',
  'sculptureList sculptureRecordOf shotList sidesOf sinceCarried stopWorkingOut storageHealth surveyors tabs thenAndNowOf thingsOf',
  'typedAt typedNotKept unsettled walkList walkSettingKept paperSource recordState pictureData preparePaper waysToSave whatNames workingOut zoneAt zoneMapOf zoneView zonesToLook',
].flatMap((line) => line.split(' '));

/** They do not come to the store of a collection: a box, the camera, the browser, the opening of a store, which has tests of its own. */
export const besideTheStore: readonly string[] = [
  'keepAwake',
  'askPersistence askToKeep canSaveStraight deskOn feelLevel leaveDemo lightNow mayFeelLevel notNow openDemo openDesk openViewfinder removeDemo roundDeed',
  // They end in joinFolder and step.
  'keepInStep switchOnPicked switchOnServer',
  // Of the device, the demo's tour, and a trial write beside the record that is taken away again.
  'checkReady demoWasOpen fullUnderstood setTourStep touchedNow tryRoom wasAway watchBattery',
  'saveFile sayLight setSetting setSurveyor takeFrame takeOver',
].flatMap((line) => line.split(' '));
