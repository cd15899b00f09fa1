import { nameOf } from '../../src/engine/record';

interface Named {
  readonly collection: string;
  readonly sculpture: string;
  readonly zone: string;
  readonly insert: string;
  readonly photo: string;
  readonly id: (n: number) => string;
}

/** One of each thing that is planned, paid, prepared or watched: kind, name, body and what it lies in. */
export const plannedThings = ({ collection, sculpture, zone, insert, photo, id }: Named) => {
  const euros = (minor: number) => ({ minor, currency: 'EUR' });
  const signed = [{ role: 'Conservator', name: 'Ilka Imagined', on: '2026-03-02' }];
  const who = { role: 'Conservator', name: 'Ilka Imagined' };
  const [campaign, option, fund, decision, bid, hotDay] = [
    nameOf.campaign(id(40)),
    nameOf.option(id(41)),
    nameOf.fund(id(42)),
    nameOf.decision(id(43)),
    nameOf.bid(id(44)),
    nameOf.hotDay(id(45)),
  ];
  const at = '2026-06-03T16:20:00.000+01:00';
  const ofWork: [string, string, object][] = [
    [
      'methodSheet',
      nameOf.methodSheet(sculpture),
      { sculpture, allowed: ['soft brush'], forbidden: ['pressure washer'], alsoForbidden: ['the ladder on the wing'] },
    ],
    [
      'weather',
      nameOf.weather(id(46)),
      {
        ...{ sculpture, date: '2026-05-21', time: '10:40', before: 'wax', air: 15, humidity: 86, surface: 14 },
        ...{ dryHours: 30, said: 'wait', overridden: { by: 'Steward', why: 'The wind dries it' } },
      },
    ],
    [
      'incident',
      nameOf.incident(id(47)),
      {
        ...{ sculpture, date: '2026-01-12', time: '08:10', sort: 'storm', what: 'A branch lies on it', zones: [zone] },
        ...{ danger: 'possible', told: [who], photos: [photo], closed: { on: '2026-01-13' } },
      },
    ],
    [
      'move',
      nameOf.move(id(48)),
      { sculpture, sort: 'loan out', from: 'the quay', to: 'the hall', left: '2026-02-01', backDue: '2026-04-01' },
    ],
    [
      'yearVerdict',
      nameOf.yearVerdict(sculpture, 2026),
      { sculpture, year: 2026, verdict: 'campaign', why: 'Wax does not hold', by: 'Steward', date: '2026-11-20' },
    ],
    [
      'task',
      nameOf.task(id(49)),
      { sculpture, zone, what: 'Clear the weep hole', from: '2026-09-01', until: '2026-09-30', every: 12 },
    ],
    [
      'dueAnswered',
      nameOf.dueAnswered('warranty/1'),
      { sculpture, key: 'warranty/1', on: '2026-09-21', answer: 'done' },
    ],
    [
      'option',
      option,
      {
        ...{ sculpture, sort: 'strip and repatinate', title: 'Strip, hot patina, then wax', zones: [zone] },
        costs: [
          { name: 'Strip', amount: euros(4_600_000), first: 0, growth: 0.02, contingency: true, price: 'quote' },
          { name: 'Wax', amount: euros(310_000), first: 1, every: 1, last: 20, price: 'made up' },
        ],
        goodMonths: { value: 10, low: 8, high: 11, from: 'published' },
        ...{ irreversible: 1, irreversibleSize: 'large', does: 'All', risks: 'Loss of detail', who: 'Conservator' },
      },
    ],
    [
      'quote',
      nameOf.quote(id(50)),
      {
        ...{ sculpture, option, who: 'Foundry', what: 'Strip', amount: euros(4_600_000), state: 'quote' },
        ...{ date: '2026-03-01', validUntil: '2026-08-28' },
      },
    ],
    [
      'decision',
      decision,
      {
        ...{ sculpture, date: '2026-03-02', title: 'Campaign', option, chosen: 'Strip', dissent: 'One would wait' },
        refused: [{ what: 'Wait', why: 'It gets dearer' }],
        ...{ evidence: ['six rounds'], consulted: [who], signed, review: '2027-03-02' },
        tripwires: [{ id: 't1', sort: 'hold over', zone, level: 6, times: 2 }],
      },
    ],
    [
      'tripwireAnswer',
      nameOf.tripwireAnswer(decision, 't1', '2026-10-01'),
      { sculpture, decision, tripwire: 't1', seen: '7 months', on: '2026-10-01', answer: 'look again', by: 'Steward' },
    ],
    [
      'campaign',
      campaign,
      {
        ...{
          sculpture,
          title: 'The stair',
          opened: '2026-03-02',
          step: 'money',
          option,
          decision,
          fund,
          takenBid: bid,
        },
        ...{ warrantyUntil: '2029-11-22', warrantyWho: 'Foundry' },
      },
    ],
    [
      'cause',
      nameOf.cause(id(51)),
      { sculpture, sort: 'sprinkler', zones: [zone], found: '2026-03-01', state: 'removed', changed: '2026-04-01' },
    ],
    [
      'quantities',
      nameOf.quantities(campaign),
      {
        ...{ sculpture, campaign, date: '2026-03-03' },
        items: [
          {
            id: 'i1',
            zone,
            name: 'Shoulder',
            task: 'strip',
            unit: 'm2',
            amount: 1.2,
            low: 1,
            high: 1.4,
            reach: 'ladder',
            condition: 'even green film, 20 %',
            photo,
            inserts: [insert],
          },
          { id: 'i2', insert, name: 'Lens', task: 'protect', unit: 'piece', amount: 2 },
        ],
      },
    ],
    [
      'bid',
      bid,
      {
        ...{ sculpture, campaign, who: 'Foundry', date: '2026-03-20', validUntil: '2026-09-20', currency: 'EUR' },
        ...{ lines: [{ item: 'i1', minor: 310_000, measured: 1.3 }], named: [who], visited: '2026-03-10' },
      },
    ],
    [
      'bidCriteria',
      nameOf.bidCriteria(campaign),
      {
        ...{ sculpture, campaign, date: '2026-03-02', scorers: [{ id: 's1', ...who }] },
        criteria: [
          { id: 'method', weight: 70 },
          { id: 'own 1', name: 'Apprentices', weight: 30 },
        ],
        changed: [
          {
            on: '2026-03-21',
            why: 'The board asked',
            bids: 1,
            sheets: 0,
            before: [{ id: 'method', weight: 100 }],
          },
        ],
        opened: { on: '2026-03-28', by: 'Steward' },
      },
    ],
    [
      'bidScore',
      nameOf.bidScore(campaign, 's1'),
      {
        ...{ sculpture, campaign, scorer: 's1', date: '2026-03-25', handedIn: '2026-03-26' },
        marks: [{ bid, criterion: 'method', mark: 8 }],
      },
    ],
    [
      'completeness',
      nameOf.completeness(campaign, 'report', 'own'),
      {
        ...{ sculpture, campaign, of: 'report', bid, from: 'Foundry', date: '2026-10-30' },
        items: [{ id: 'materials added', state: 'missing', where: 'page 3' }],
      },
    ],
    [
      'approval',
      nameOf.approval(id(52)),
      {
        ...{ sculpture, campaign, of: 'sample area', zone, m2: 0.04, date: '2026-06-01', answer: 'yes' },
        ...{ words: 'Tool marks stand', photos: [photo], signed },
      },
    ],
    [
      'colourCard',
      nameOf.colourCard(id(53)),
      {
        ...{ sculpture, campaign, zones: [zone], date: '2026-06-02', words: 'Deep brown', dryShade: photo },
        ...{ drySun: photo, wetShade: photo, wetSun: photo, panel: 'P-2', kept: 'store, shelf 4', signed },
      },
    ],
    [
      'layer',
      nameOf.layer(id(54)),
      {
        ...{ sculpture, campaign, zone, order: 1, date: '2026-06-03', time: '09:15', solution: 'ferric nitrate' },
        ...{ strength: '5 %', tool: 'brush', surface: 180, passes: 3, rinsed: true, by: 'Foundry', photos: [photo] },
      },
    ],
    [
      'hotDay',
      hotDay,
      {
        ...{ sculpture, campaign, date: '2026-06-03', permit: 'HW-12', authorisedBy: who, clearZone: 11 },
        ...{ checked: ['extinguisher'], watcher: who, watchMinutes: 60, workEnded: at, inserts: [insert] },
        ...{
          watchKept: {
            at: '2026-06-03T17:25:00.000+01:00',
            by: 'Helper',
            counted: 12,
            own: { from: '16:20', until: '17:20' },
          },
        },
        closed: { at: '2026-06-03T17:30:00.000+01:00', by: 'Steward' },
      },
    ],
    [
      'insertCare',
      nameOf.insertCare(insert),
      {
        ...{ sculpture, insert, bedding: 'putty', condition: 'one chip', photos: [photo], spare: false, most: 60 },
        ...{ mostDifference: 40, mostPerMinute: 5, limitBy: who, limitDate: '2026-05-01', method: 'shield' },
      },
    ],
    [
      'insertReading',
      nameOf.insertReading(id(55)),
      { sculpture, insert, hotDay, time: '10:05', spot: 'rim', celsius: 19, by: 'Helper' },
    ],
    [
      'insertAfter',
      nameOf.insertAfter(hotDay, insert),
      { sculpture, insert, hotDay, state: 'unchanged', photos: [photo], by: 'Helper', at },
    ],
    [
      'accessSheet',
      nameOf.accessSheet(sculpture),
      {
        ...{ sculpture, height: 4.9, plinth: 1.1, equipment: 'lift', outreach: 3, bears: 'not known', waterDepth: 0.6 },
        ...{ competent: who, days: 3, dayCost: euros(38_000), rescue: 'Two people, a line' },
      },
    ],
    [
      'paperText',
      nameOf.paperText('condition-report', 'purpose', sculpture),
      {
        sculpture,
        paper: 'condition-report',
        about: sculpture,
        part: 'purpose',
        text: 'For the loan',
        date: '2026-06-01',
      },
    ],
    [
      'paperText',
      nameOf.paperText('season-log', 'remark', `${sculpture} 2026`),
      {
        sculpture,
        paper: 'season-log',
        about: sculpture,
        year: 2026,
        part: 'remark',
        text: 'Windy',
        date: '2026-06-01',
      },
    ],
    [
      'paperIssued',
      nameOf.paperIssued(id(59)),
      {
        ...{
          sculpture,
          paper: 'board-case',
          about: campaign,
          speaksOf: ['money'],
          title: 'Board case',
          date: '2026-06-02',
        },
        ...{ by: 'Steward', status: 'final', to: 'The board', state: 'a1b2' },
      },
    ],
    [
      'keptWhere',
      nameOf.keptWhere(id(60)),
      { sculpture, sort: 'keys', what: 'Key of the plinth door', where: 'Hook 3 in the porch', who: 'Steward' },
    ],
  ];
  const ofCollection: [string, string, object][] = [
    [
      'product',
      nameOf.product(id(56)),
      {
        ...{ name: 'Cold paste wax', sort: 'microcrystalline', batch: 'W-26A', left: 2, unit: 'tin' },
        ...{ counted: '2026-05-01', gramsPerUnit: 400, surfaceFrom: 10, surfaceTo: 30 },
      },
    ],
    [
      'groundsAgreement',
      nameOf.groundsAgreement(id(57)),
      { who, topic: 'sprinkler', text: 'Off in May', works: [sculpture], agreed: '2026-02-01', review: '2027-02-01' },
    ],
    [
      'yearPlan',
      nameOf.yearPlan(collection, 2026),
      {
        ...{ year: 2026, works: [{ work: sculpture, survey: 'full', waxes: 2, day: '2026-05-12', lift: true }] },
        ...{ liftDays: [{ day: '2026-05-12', cost: euros(38_000) }], budget: euros(500_000) },
        prices: [{ type: 'wax', each: euros(9_000), per: 'm2' }],
        ...{ helpers: 'Two on lift days', contacts: 'Conservator, at the number on the door' },
      },
    ],
    ['sitePlan', nameOf.sitePlan(collection), { metresWide: 120, spots: [{ work: sculpture, x: 0.2, y: 0.4 }] }],
    [
      'listTicks',
      nameOf.listTicks('packing', '2026-05-12'),
      { list: 'packing', of: '2026-05-12', ticked: [{ item: 'gloves', on: '2026-05-11' }], own: ['the long brush'] },
    ],
    [
      'moneyRules',
      nameOf.moneyRules(collection),
      { version: 1, currency: 'EUR', rate: 0.03, growth: 0.04, contingency: 0.12, years: 20, spending: 0.04 },
    ],
    [
      'fund',
      fund,
      {
        ...{ title: 'The stair', sculpture, lines: [{ id: 'l1', name: 'Strip', amount: euros(4_600_000) }] },
        ...{ priced: '2026-03-01', wanted: '2028-05-01', yearly: euros(200_000), upkeep: euros(310_000) },
      },
    ],
    [
      'gift',
      nameOf.gift(id(58)),
      {
        sculpture,
        fund,
        who: 'A family',
        amount: euros(600_000),
        state: 'hoped',
        chance: 0.4,
        expected: '2027-01-01',
        only: ['l1'],
      },
    ],
  ];
  return [
    ...ofWork.map((row) => [...row, sculpture] as const),
    // A fund for one work lies in the work, and so do its gifts.
    ...ofCollection.map((row) => [...row, row[0] === 'fund' || row[0] === 'gift' ? sculpture : collection] as const),
  ];
};
