import { measure } from '../format';
import { spoken } from '../tongue';

/** Help on the works themselves, this device, and how it is all worked out. `from` says where the figures of a screen come from. */
export const helpWorks = spoken('helpWorks', 'helpWorks', {
  sculptures: {
    title: 'Sculptures',
    what: 'Every work in your care, those in most need first. A danger to people goes before all, then urgency, then the lower index. A work nobody has looked at stands last and says so.',
    first: 'Touch the work on top. On the first day: add a work, draw up its zones, then start a round.',
    from: 'The index and class of a work come from its last finished round. The circle is filled as far as the index goes; the pale part is its range.',
  },
  welcome: {
    title: 'The first screen',
    what: 'Three ways to begin: a collection of your own, a file somebody gave you, or an invented garden to look round in. The garden lies apart and is left with one touch.',
    first:
      'Never seen this before? Open the garden and take its tour of five minutes. On a tablet, put the app on the home screen before the first entry of your own.',
    from: 'What stands under “Before you begin” was asked of this browser just now.',
  },
  'sculpture-new': {
    title: 'Add a sculpture',
    what: 'What is known of one work. Only the title is needed; the rest can wait until you have the file at hand.',
    first: 'Type the title and add it. The next screen asks for its zones.',
    from: 'You type it. Place and access can be left out when a file leaves this device, so they may hold keys and codes.',
  },
  sculpture: {
    title: 'One work',
    what: 'All that hangs on one work: its sides, its index and classes, zones, rounds, photos, and what could hurt someone. From here you start a round or a look.',
    first: 'In spring touch “Start a round”. Between rounds touch “Look”. To see what changed, touch “Then & now”.',
    from: 'The index comes from the last finished round, weighted by area. Beside it stands what it would be if the zones not seen were as good as the best, or as bad as the worst.',
  },
  'sculpture-edit': {
    title: 'Edit the sculpture',
    what: 'What is known of the work, to be mended or filled in. Nothing is lost: the earlier wording stays in the record.',
    first: 'Change the line that is wrong and keep the changes.',
    from: 'You type it. Removing a work takes it off the lists only; Undo brings it back.',
  },
  'sculpture-zones': {
    title: 'Zones',
    what: 'The parts a round goes through, in the order you meet them. Four to nine suit most works; over thirty, rounds tend to be cut short.',
    first: 'Add the zone you reach first. Then the next, walking round the work once.',
    from: 'Areas are yours. The app says where one zone speaks for nearly the whole work, or where there are too many.',
  },
  'sculpture-zone-new': {
    title: 'Add a zone',
    what: `One part of the work that can be judged at a glance: one surface, one exposure, about ${measure('area', 0.3, 1)} to ${measure('area', 3, 0)}.`,
    first:
      'Give it the name you would call to someone on the ground, then its area. “From simple shapes” helps where nobody knows it.',
    from: 'Areas from shapes are sums of cylinders, boxes and the like, with the error you name.',
  },
  'sculpture-zone': {
    title: 'One zone',
    what: 'What is known of one zone, its photos, and ways to split it or join it to another.',
    first:
      'Mend a name or an exposure as you like. For a new area or surface, say from which day: earlier rounds keep what they were made with.',
    from: 'After a split, earlier rounds are told again over the parts together, by their shares of the area.',
  },
  place: {
    title: 'The air of the place',
    what: 'How hard the air is on bare copper and zinc here, from four yearly means. A label for the file and for an insurer, not a statement on any work.',
    first: 'Ask the nearest weather and air station for the four figures and type them with their source.',
    from: 'Rate and class after ISO 9223, growth over years after ISO 9224, with the uncertainty the standard itself gives.',
  },
  'next-steps': {
    title: 'Next steps',
    what: 'All zones of all works in order of need, with what to do first and why. People stand above everything.',
    first:
      'Read the first three. Open “Why these classes” on the one that surprises you. Set a class yourself where you know better.',
    from: 'Urgency by rule, then burden, then the lower index. “How firm is this order?” draws weights and coverages anew, a thousand times, within their errors.',
  },
  'sculpture-logbook': {
    title: 'Logbook',
    what: 'What was done to the work and by whom: washing, waxing, repairs, campaigns, and the looks in between.',
    first: 'Write down the last waxing, with its day as exactly as you know it. Past years too: each makes a hold.',
    from: 'You type it. Rounds and looks come in by themselves.',
  },
  keeping: {
    title: 'Keeping it safe',
    what: 'How safely the record lies on this device, where copies are, what was typed and not kept, and how to make room.',
    first: 'Ask the browser to keep it. Then carry a bag out after each day of rounds and open it once elsewhere.',
    from: 'Entries and bytes are counted here. “Look everything through” compares each photo with the fingerprint taken when it was kept.',
  },
  method: {
    title: 'How is this worked out?',
    what: 'Every number the app reckons with, in the very rows the sums use, each with its source or the word that it is our own judgement.',
    first: 'Try one finding at the top and watch the index move. Then read the kinds that stand in your last round.',
    from: 'The list of sources is at the foot. No published standard gives an index for outdoor bronze; the scale is this project’s.',
  },
  settings: {
    title: 'Settings',
    what: 'How you hold the device and read it, in which language and units, and who is at work.',
    first: 'Add yourself under “Who is at work”. Outdoors choose “In the sun”; with gloves on, “Gloves”.',
    from: 'Kept on this device only; nothing here travels in a file but the people you add.',
  },
  'eye-check': {
    title: 'Eye check',
    what: 'Twelve drawn patches whose coverage is known, in two minutes. It measures how far your own eye is off.',
    first: 'Say whose eye it is, then answer quickly: the first glance counts, as on the ladder.',
    from: 'The spread of your answers, together with zones you judged twice in rounds. It widens or narrows every range of your rounds; your entries stay as they are.',
  },
});
