import { spoken } from '../tongue';

/** Help on the year and its care. */
export const helpPlan = spoken('helpPlan', 'helpPlan', {
  plan: {
    title: 'Plan',
    what: 'The way to everything that is planned: what is due, each work, the year, money and decisions, and the things and people it takes.',
    first: 'Open “What is due”. In winter open the plan of the year.',
    from: 'The lines beside each entry count what the record holds now.',
  },
  'sculpture-plan': {
    title: 'Plan of this work',
    what: 'The same for one work: decide, care for it, prepare what is needed to reach and protect it.',
    first: 'If only care is due, go to “Wash and wax day”. If waxing no longer helps, begin with “Options”.',
    from: 'What the record holds of this work. Closed parts stay out of the way until they hold something.',
  },
  due: {
    title: 'What is due',
    what: 'Everything with a day, from holds, plans, promises, decisions and people, in one list.',
    first: 'Deal with what is past its day. Then order by walk, and do on one walk what one walk can do.',
    from: 'Each line says what asks for it. It goes when the record shows it done; nothing is ticked off here but your own tasks.',
  },
  year: {
    title: 'Plan of the year',
    what: 'What each work gets this year, on which day, in how many hours, and which days need a lift.',
    first: 'Read the proposals with their “Why”. Change what you know better and give the first day.',
    from: 'Proposed from classes, holds and your own past pace. What you say stands until you take it back.',
  },
  packing: {
    title: 'Packing list',
    what: 'What to take along on one day, or for the whole year, ticked as it goes into the car.',
    first: 'Choose the day, then tick. Untick what came back broken.',
    from: 'From the works of that day: how they are reached, what is done to them, which closures were agreed.',
  },
  briefing: {
    title: 'Briefing for a helper',
    what: 'One page for whoever comes along: the works in order, when to stop and whom to call, what not to do.',
    first: 'Choose the day, print it, talk it through before the first ladder.',
    from: 'The year, the access sheets and the methods allowed on each work.',
  },
  'close-down': {
    title: 'Winter close-down',
    what: 'What is done before the first frost, once for the garden and for each work.',
    first: 'Start with drains and water: they do the damage. Tick as you go; add what is special here.',
    from: 'Common practice, and the causes and inserts in your record.',
  },
  'site-plan': {
    title: 'Plan of the site',
    what: 'Where the works stand, so that a day of visits takes the short way.',
    first: 'Choose a photo of a plan, or take the blank sheet. Choose a work, then touch where it stands.',
    from: 'The shortest way round is worked out on this picture; steps, gates and tides are yours to know.',
  },
  incidents: {
    title: 'Incidents',
    what: 'Storm, blow, paint, theft: what happened, who was told, how it ended.',
    first: 'People away, then photos, then write it down. Leave paint where it is until the conservator has answered.',
    from: 'You report it. An incident round shows what it did to the surface.',
  },
  grounds: {
    title: 'Agreements with the grounds staff',
    what: 'What those who mow, water and salt do, and leave, near the works.',
    first:
      'Write down the sprinklers. Give each agreement a day to go through it again, print the page, hang it in the shed.',
    from: 'You agree it. The day comes back under “What is due”.',
  },
  moves: {
    title: 'Moves and loans',
    what: 'Where a work went, how it was held, and which rounds show its state before and after.',
    first: 'Make a round in the two months before it leaves. Then write down the move.',
    from: 'Rounds before and after are found by their dates.',
  },
  products: {
    title: 'Products in store',
    what: 'Wax, detergent and the like: batch, safety sheet, shelf life, what is left.',
    first: 'Add the wax you use, with the number on the tin.',
    from: 'What is left is what you counted, less what the logbook says was used since.',
  },
  'sculpture-care-day': {
    title: 'Wash and wax day',
    what: 'Whether air and surface allow it now, what may be done to this work, and the record of what was done.',
    first:
      'Read what may never be done. Type air, humidity and the surface, then go or wait. Record it before you drive home.',
    from: 'Dew point by a published formula; the margins stand beside the reading. You may go against it, with a reason that is kept.',
  },
  'sculpture-season': {
    title: 'Season log',
    what: 'One year of one work on a page: what, where, with which product, who and how long, in what air.',
    first: 'Choose the year and print it for the file.',
    from: 'The logbook.',
  },
  'sculpture-method-sheet': {
    title: 'What may be done to it',
    what: 'What is allowed, doubtful and forbidden on this work, for the helper with the hose.',
    first: 'Let the conservator say it once and write the name and the day. Print it.',
    from: 'A usual list until somebody says otherwise; then the words of the person named.',
  },
  'sculpture-metal': {
    title: 'Metal ledger',
    what: 'Every time metal or an old coating was taken off, by anybody, and how often each zone has been through it.',
    first: 'Look for old reports and write their strips into the logbook. Then read the count.',
    from: 'The logbook. Areas are those of the zones; how much went is said only where somebody measured it.',
  },
  'sculpture-access': {
    title: 'Access',
    what: 'How the work is reached, what it stands on and what stands in the way, for whoever brings the lift.',
    first: 'Write height and plinth. Then ground, water, closures, and the person who decides on the day.',
    from: 'Sums of heights and feet of ladders name their rule beside them. They are no leave to climb.',
  },
  'sculpture-inserts': {
    title: 'Inserts and heat',
    what: 'What each insert bears, who said so, how it is kept from heat, and sums for a talk with the specialist.',
    first: 'Fill in whether it can come out. If it can, it does, before any heat.',
    from: 'Limits are set by named experts. The sums give bounds only, and never a safe distance.',
  },
});
