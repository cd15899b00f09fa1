import { spoken } from '../tongue';

/** The request for proposals with its schedule of quantities. */
export const paperRequest = spoken('paperRequest', 'paperRequest', {
  title: 'Request for proposals',
  reader: 'contractors and conservators',
  heading: (campaign: string) => `Request for proposals: ${campaign}`,
  lead: (owner: string, work: string) =>
    `${owner} asks for proposals to treat the outdoor bronze ${work}. This request tells what was seen, how much of it there is, how the work is reached and what has to be kept from harm. It does not tell how to do it: the method is yours to propose.`,
  notice: 'Who may do this work',
  noticeText: [
    'Only contractors who are licensed and insured for the work they offer. Heat, scaffolds, chemicals and waste are under local rules; where this request and the law differ, the law holds.',
    'A conservator of metals takes part on your side or ours, says by what means the surface is treated, and may stop the work.',
    'No figure here tells how near a flame may come to anything, how long a thing holds, or what lies under a surface. Ask, visit, measure.',
  ],

  dates: 'Dates and whom to ask',
  datesLabel: 'Dates and whom to ask',
  datesHint:
    'Day of the site visit, last day for questions, last day for proposals, when it is decided, to whom it is sent.',
  datesRoom: ['Site visit', 'Questions until', 'Proposals until, and to', 'Decision by'],
  siteVisit: 'Everyone who offers has been on site. Nobody prices what they have not seen.',

  work: 'The work',
  facts: {
    number: 'Number',
    title: 'Title',
    maker: 'Maker',
    date: 'Made',
    materials: 'Materials',
    dimensions: 'Size',
    place: 'Where it stands',
    surface: 'Surface',
  },
  surface: (all: string, low: string, high: string, zones: string) => `${all} in ${zones} zones (${low} to ${high})`,
  history: 'What was done to it before',
  historyCaption: 'From the logbook, the latest first',
  historyColumns: { when: 'When', what: 'What', where: 'Where', with: 'With', by: 'By' },
  historyNone: 'Nothing is in the logbook.',
  historyMore: (n: number) =>
    n === 1 ? 'One earlier entry is not shown; ask for it.' : `${n} earlier entries are not shown; ask for them.`,
  stripped: (n: number) =>
    n === 0
      ? 'No treatment that takes metal away is on record.'
      : n === 1
        ? 'This surface has been stripped once on record.'
        : `This surface has been stripped ${n} times on record.`,
  thoughtHow: 'What somebody thought, with who and when. It was not tested unless it says so.',

  causes: 'What feeds the damage',
  causesCaption: 'Dealt with before the surface is treated',
  causesColumns: { what: 'What', where: 'Where', state: 'How it stands', seen: 'What shows it' },
  causesCaptionPast: 'As they stand today',
  causesNonePast: 'No cause is written down.',
  causesNone: 'No cause is written down. Say in your proposal what you take to be one.',
  causesOpen: 'What is still at work is dealt with before the treatment begins, or your proposal allows for it.',

  drawings: 'Drawings: sides and zones',
  drawingsNone: 'No zones are drawn on a side yet.',
  drawingsHow:
    'Outlines were drawn by hand on the photo beside them. They show which zone is meant and are no basis for measuring.',

  schedule: 'Schedule of quantities',
  scheduleNone: 'No lines of work are written down yet. Without them, proposals cannot be set beside each other.',
  caption: (day: string) => `Lines of work as of ${day}`,
  columns: {
    number: 'No.',
    what: 'Where and what',
    amount: 'Amount',
    measured: 'How the area was taken',
    reach: 'Reached',
    seen: 'What was seen',
  },
  eachLine: (task: string) => `Each line asks for the same: ${task.charAt(0).toLowerCase()}${task.slice(1)}.`,
  seenNear: (inserts: string) => `Inserts in it: ${inserts}.`,
  measured: {
    typed: 'entered: measured, from drawings or estimated',
    solids: 'from simple solids',
    strips: 'from girths and strips',
    outline: 'from an outline on a photo',
  },
  quantitiesHow: (low: string, high: string) =>
    `Areas are those of the survey and may be off by ${low} to ${high} and more; the range stands beside each. You measure on your visit; what is paid is measured again on site, together.`,
  total: (value: string, low: string, high: string) => `Surface treated: ${value} (${low} to ${high}).`,
  seenHow: (day: string) =>
    `What was seen: judged by eye in the round of ${day}, by the words of the person who looked. No sample was taken and nothing was opened unless it says so.`,
  against: 'Where the schedule and the record of today differ',

  inserts: 'Inserts and neighbours',
  insertsHow:
    'Each is taken out, or shielded and watched within the limit its specialist set. You price their protection line by line.',
  neighbours: 'What stands around',
  neighboursLabel: 'What stands around and must be kept from harm',
  neighboursHint: 'Stone, planting, paving, plaques, pipes, cables, animals.',

  access: 'Access and site',
  grounds: 'Agreed with those who keep the grounds',
  groundsUsual:
    'Paving, lawn, planting and stone around the work are covered before anything is set down, and handed back as they were.',
  hours: 'Hours of work',
  hoursRoom: 'Hours of work',
  waste: 'Run-off and waste',
  wasteUsual:
    'Wash water, spent media, wax and chemicals are caught and taken away under local rules; nothing goes into soil, drain or basin.',

  hot: 'Hot work',
  hotText:
    'No flame is lit without a permit for the day, a clear zone, and a watcher who stays after the last flame. The fire authority and the insurer say how much of each; the published rules below are a floor.',
  hotChecks: 'Looked at and in order before anything is lit',

  approvals: 'Sample area, test panel and who says yes',
  approvalsText: [
    'Before the whole surface is touched a sample area of at most one hand is cleaned where the conservator says, and looked at dry by the conservator and the owner.',
    'The colour is agreed on a test panel or patch that is looked at dry and wet, in sun and in shade, photographed in each, and signed by those who must: the artist or the estate, the owner, the conservator.',
    'Each stage goes on only after a yes in writing. The panel stays with the owner.',
  ],
  stop: 'When work stops',
  stopText: [
    'Metal is laid bare where that was not agreed, or tool marks, stamps or joints suffer.',
    'An insert changes, or a reading comes near its limit.',
    'Something is found that nobody expected: an old repair, a hollow, a core that weeps, a trace of the first colour.',
    'Surface, air or weather are outside what the product asks for.',
  ],
  stopThen:
    'It goes on after the conservator and the owner have said how. A find is photographed before anything else.',
  unwanted: 'What is not wanted',
  unwantedText: [
    'Lacquer or any film that has to be stripped when it fails.',
    'A recipe that is not written down and handed over.',
    'Work by people who are not named in the proposal.',
  ],
  unwantedForbidden: (methods: string) => `Never on this work: ${methods}.`,

  proposal: 'What the proposal must contain',
  proposalHow: 'A proposal that leaves one of these out is asked for it before it is judged.',
  documents: 'What is handed over',
  documentsHow: 'The report holds:',
  documentsText:
    'Photographs before, during and after from the stations marked on site, with a sign in each that names work, zone and day; the layer log; the temperatures; the report. The last payment is made against them.',
  ownership: 'Who owns photographs and recipe',
  ownershipLabel: 'Who owns photographs and recipe',
  ownershipHint: 'Ask counsel. Usual: both may use the photographs; the recipe stays with the work.',
  ownershipRoom: 'To be settled before the contract',
  terms: 'Warranty, insurance, people, payment',
  termsText: [
    'Say until when you answer for the work, for what, and how soon you come back.',
    'Say who insures the work while you treat it. Policies for works of art often leave out damage during treatment; ours and yours are read together before the contract.',
    'Name the people who will be on site, with what they have done before. They are not exchanged without our yes.',
    'The last payment is held until the report is whole.',
  ],
  termsLabel: 'Your own terms',
  termsHint: 'What your purchasing rules ask for. It stands below the usual terms.',

  criteria: 'How proposals are judged',
  criteriaCaption: 'Weight of each, out of 100',
  criteriaColumns: { what: 'What', weight: 'Weight', asks: 'What is looked at' },
  criteriaHow:
    'Not the lowest price alone. Each of us judges by themselves first; how far we differ is shown. The weights are our own choice.',
  criteriaLabel: 'How proposals are judged, in your own words',
  criteriaHint: 'Leave it empty and the table of weights stands in the paper.',

  form: 'Price form',
  formLead:
    'To be filled in and sent back with the proposal. One currency for all of it. A line left empty counts as not offered.',
  formCaption: 'Prices along the schedule of quantities',
  formColumns: {
    what: 'Line',
    amount: 'Amount',
    own: 'Measured by you',
    unit: 'Price of a unit',
    price: 'Price',
  },
  formSum: 'Sum without tax',
  formTax: 'Tax',
  formTotal: 'Sum with tax',
  formRoom: [
    'Currency',
    'Valid until',
    'Visited the site on',
    'People on the job, by name',
    'Insured with, up to',
    'Answers for the work until',
  ],
  bidder: 'Bidder',

  photos: 'Photographs',
  photosHow: 'The latest from each station and zone. More, and the originals, on request.',

  lacks: {
    schedule: 'a schedule of quantities',
    drawings: 'zones drawn on a side',
    dates: 'dates, and whom to ask',
    ownership: 'who owns photographs and recipe',
    hours: 'hours of work',
    causes: 'a word on what feeds the damage',
    item: (name: string) => `marked as missing in this request: ${name}`,
    unseen: 'that somebody has looked through the request',
  },
});
