import { measure } from '../format';
import { spoken } from '../tongue';
import { namesOfPlanned } from './namesOfPlanned';
import type { Params } from './sentence';

type Sentence = (s: Params) => string;

/** Why a deed was not done: what is wrong, where, what to do. Nothing was stored. */
export const reasonsOfActions = spoken('reasonsOfActions', 'reasonsOfActions', {
  'nothing to undo': () => 'There is nothing to undo.',
  'nothing changed': () => 'Nothing was changed, so nothing was stored.',
  'not here': (s) =>
    `${s.thing('thing')} is not on this device. It may have been removed; go back and open the list again.`,
  'title missing': () => 'The sculpture has no title. Write one.',
  'number missing': () => 'The sculpture has no number. Write one.',
  'name missing': () => 'The name is missing. Write one.',
  'text missing': () => 'The text is missing. Write something, or leave without storing.',
  'field not possible': (s) =>
    `What is written under “${s.text('field')}” cannot be kept: it is too long, missing, or outside what is possible. Change it and keep it again.`,
  'list too large': (s) =>
    `This file is larger than ${s.number('most')} MB. Save the list alone, as CSV, and choose it again.`,
  'source missing': () => 'It is not said where this comes from. Name the list or the report.',
  'nothing to take over': () => 'There is nothing here that can be taken over.',
  'statement too long': (s) => `A line is longer than ${s.number('most')} characters. Break it in two.`,
  'statement missing': () => 'The thought has no text. Write what you think.',
  'role missing': () => 'The role is missing. Write what this person does, such as Steward.',
  'side missing': () => 'It is not said which side the picture shows. Choose or write one.',
  'aim missing': () =>
    'It is not said what the middle of the frame is aimed at. Write it: the belt buckle, the left wing.',
  'find missing': () =>
    'It is not said how the square is found again. Write it so that a stranger could put the frame there.',
  'station not possible': (s) =>
    `${{ bearing: 'The direction, in degrees from north,', distance: 'The distance from the work, in metres,', height: 'The height of the lens, in metres,', lens: 'The focal length, in millimetres,' }[s.text('what')] ?? s.text('what')} lies between ${s.number('low', 1)} and ${s.number('high')}. Check the figure.`,
  'station letter taken': (s) =>
    `Letter ${s.text('letter')} is taken by another station, or stands on the card in its photos. Choose another letter.`,
  'day not valid': (s) => `“${s.text('day')}” is not a day between the years 1000 and 2200. Choose the day again.`,
  'area not valid': () => 'The area cannot be right. Write an area over 0, and a range that holds the value.',
  'letter taken': (s) => `Letter ${s.text('letter')} is taken by another zone. Choose another letter.`,
  'zone has visits': (s) =>
    `Zone ${s.text('letter')} was looked at ${s.times('visits', 'time', 'times')} and cannot be removed. Split it or join it with another: its history stays.`,
  'zone has ended': (s) => `Zone ${s.text('letter')} has ended. Open the zone it lives on in.`,
  'split needs two': () => 'A split needs at least two new zones. Add another.',
  'shares do not sum': (s) =>
    `The shares of the new zones come to ${s.percent('sum')} and should come to 100 %. Change one of them.`,
  'join needs two': () => 'Joining needs at least two zones. Choose another.',
  'join across sculptures': () => 'Zones of two sculptures cannot be joined. Choose zones of one.',
  'day before last visit': (s) =>
    `The day ${s.day('day')} is before the last visit of this zone, ${s.day('last')}. Choose a later day.`,
  'order incomplete': () => 'The new order does not name every zone once. Open the list again.',
  'level not valid': () => 'The action level must be a number from 0 to 100.',
  'hazard not valid': (s) => `The hazard of ${s.kind('kind')} must be a number from 0 to 1.`,
  'climate not possible': (s) =>
    `${{ temperature: 'A yearly mean temperature', humidity: 'Relative humidity', so2: 'The deposition of sulfur dioxide', chloride: 'The deposition of chloride' }[s.text('what')] ?? s.text('what')} lies between ${s.number('low')} and ${s.number('high')}. Check the figure and its unit.`,
  'return level not valid': () => 'The level must be a share from 0.5 to 100 %.',
  'chance not valid': () => 'The chance must be a share from 5 to 95 %.',
  'class not valid': () => 'A class is a number from 0 to 3. Choose one of the four.',
  'nothing to settle': () => 'There is nothing left to settle here: it has one version.',
  'version not here': () => 'That version is not on this device. Open the list again.',
  'rounds of two sculptures': () => 'These are rounds of two sculptures, so they cannot be one.',
  'already closed': () => 'This person check is closed already.',
  'value not valid': () => 'The value must be an amount of money of 0 or more.',
  'count not valid': () => 'The number of pieces must be a whole number of 1 or more.',
  'nothing to carry': () => 'There is nothing to carry out with this choice. Choose at least one sculpture.',
  'file not read': (s) =>
    `The file “${s.text('name')}” could not be read (${s.text('said')}). Copy it to this device again and open that copy.`,
  'file has problems': (s) =>
    `The file cannot be carried in: ${s.times('count', 'problem was', 'problems were')} found. Ask for the file again from the device it comes from.`,
  'other collection': (s) =>
    `The file belongs to “${s.text('theirs')}” and here is “${s.text('here')}”. They are put together only when you say so.`,
  'carrying in left off': () => 'Left off. Nothing was carried in.',
  'invented into real': () =>
    'The invented collection cannot be carried into a real one. Open it from the first screen instead.',
  'import done already': () => 'This file was carried in already.',
  'nothing measured': () =>
    'Nothing was measured yet, so there is no figure to keep. Trace a patch or judge the dots first.',
  'no dots laid': () => 'No dots are laid on this photo. Lay them first.',
  'photo size not known': () =>
    'The size of this photo is not known, so nothing can be measured on it. Add the photo again from its file.',
  'photo laid on itself': () => 'A photo cannot be laid on itself. Choose another.',
  'erasing reason missing': () =>
    'The reason is missing. Write why this is erased: it stays in the record when all else is gone.',
  'reason holds the name': () => 'The reason holds the very name that is to go. Write it without the name.',
  'no name to erase': () => 'No name is kept for this surveyor, so there is none to erase.',
  'photo in use': (s) =>
    `${s.times('count', 'finding, zone or measurement shows', 'findings, zones or measurements show')} this photo, so it stays. Take it out there first.`,
  'nothing drawn': () => 'Nothing is being drawn here. Choose a zone and touch the corners of its outline.',
  'colour missing': () => 'No placing is written down. Write the three figures of at least one, L*, a* and b*.',
  'colour not possible': (s) =>
    `${s.text('what')}* lies between ${s.number('low')} and ${s.number('high')} on any surface. Look at the figure, its comma and its sign.`,
  'aperture not possible': () => 'The opening of the instrument is a few millimetres wide. Look at the figure.',
  'agreed by missing': () => 'It is not said who agreed on the colour. Write who did.',
  'outline too few corners': () =>
    'An outline needs at least three corners. Touch more places along the edge of the zone.',
  'outline crosses itself': () =>
    'The line crosses itself, so it is not clear what lies inside. Undo the last corner, or move one.',
  'outline too small': () =>
    'This outline is next to nothing. Look at the picture larger, and touch the corners again.',
  'outline pieces overlap': () =>
    'This piece lies on another one of the same zone. Leave it, or take the earlier one away first.',
  'length not valid': () => `This is no length. Write a number above 0, up to ${measure('length', 1000, 0)}.`,
  'scale ends in one place': () => 'Both ends lie in one place. Touch two places further apart.',
  'water runs to itself': () => 'Water runs from one zone to another. Choose two.',
  'checking left off': () => 'Left off before everything was looked through. Nothing was changed.',
  'bag holds none of them': (s) =>
    `“${s.text('name')}” holds none of the photos you chose. Open the bag they were carried out in.`,
  'no photos chosen': () => 'No photos are chosen that lie on this device. Choose a sculpture.',
  'no eye check under way': () => 'No eye check is under way here. Begin one.',
  'demo not here': (s) => `The invented collection could not be loaded (${s.text('said')}). Try again with a network.`,
} satisfies Readonly<Record<string, Sentence>>);

/** What the undo button names. */
export const namesOfDeeds = spoken('reasonsOfActions', 'namesOfDeeds', {
  'deed: collection set up': (s) => `set up “${s.text('name')}”`,
  'deed: collection renamed': (s) => `named the collection “${s.text('name')}”`,
  'deed: surveyor added': (s) => `added ${s.text('role')}`,
  'deed: surveyor edited': (s) => `changed ${s.text('role')}`,
  'deed: eye check made': (s) => `made an eye check of ${s.text('patches')} patches`,
  'deed: eye check removed': (s) => `removed the eye check of ${s.day('day')}`,
  'deed: scale set': (s) => `set the weights, version ${s.text('version')}`,
  'deed: climate set': () => 'set the air of the place',
  'deed: hold rules set': (s) => `set when green counts as back, version ${s.text('version')}`,
  'deed: sculpture added': (s) => `added ${s.text('title')}`,
  'deed: sculpture edited': (s) => `changed ${s.text('title')}`,
  'deed: sculpture removed': (s) => `removed ${s.text('title')}`,
  'deed: place set': () => 'wrote the place',
  'deed: access set': () => 'wrote the access',
  'deed: insert added': (s) => `added an insert of ${s.text('material')}`,
  'deed: insert edited': (s) => `changed an insert of ${s.text('material')}`,
  'deed: insert removed': (s) => `removed an insert of ${s.text('material')}`,
  'deed: insert value set': () => 'wrote the value of an insert',
  'deed: zone added': (s) => `added zone ${s.text('letter')}, ${s.text('name')}`,
  'deed: zone edited': (s) => `changed zone ${s.text('letter')}, ${s.text('name')}`,
  'deed: zone versioned': (s) => `made a new version of zone ${s.text('letter')}, ${s.text('name')}`,
  'deed: zone removed': (s) => `removed zone ${s.text('letter')}, ${s.text('name')}`,
  'deed: zone split': (s) => `split zone ${s.text('letter')} into ${s.text('parts')}`,
  'deed: zones joined': (s) => `joined zones ${s.text('letters')} into ${s.text('name')}`,
  'deed: zones ordered': () => 'changed the walking order',
  'deed: elevation added': (s) => `added the elevation ${s.text('side')}`,
  'deed: elevation removed': (s) => `removed the elevation ${s.text('side')}`,
  'deed: reading added': (s) => `kept a colour reading of ${s.day('day')}`,
  'deed: reading edited': (s) => `changed the colour reading of ${s.day('day')}`,
  'deed: reading removed': (s) => `removed the colour reading of ${s.day('day')}`,
  'deed: colour agreed': (s) => `wrote down the agreed colour “${s.text('name')}”`,
  'deed: agreed colour edited': (s) => `changed the agreed colour “${s.text('name')}”`,
  'deed: agreed colour removed': (s) => `removed the agreed colour “${s.text('name')}”`,
  'deed: station added': (s) => `set station ${s.text('letter')}`,
  'deed: station edited': (s) => `changed station ${s.text('letter')}`,
  'deed: station removed': (s) => `removed station ${s.text('letter')}`,
  'deed: stations ordered': () => 'changed the order of the stations',
  'deed: square added': (s) => `set the ${s.text('which')} square, zone ${s.text('letter')}`,
  'deed: square edited': (s) => `changed the ${s.text('which')} square, zone ${s.text('letter')}`,
  'deed: square removed': (s) => `removed the ${s.text('which')} square, zone ${s.text('letter')}`,
  'deed: treatment recorded': (s) => `recorded ${s.treatment('type')}`,
  'deed: treatment edited': (s) => `changed ${s.treatment('type')}`,
  'deed: treatment removed': (s) => `removed ${s.treatment('type')}`,
  'deed: class set': (s) => `set a class, by ${s.text('by')}`,
  'deed: class cleared': () => 'left the class to the rule',
  'deed: person check opened': () => 'opened a person check',
  'deed: person check closed': (s) => `closed a person check, by ${s.text('by')}`,
  'deed: thought added': (s) => `added a thought of ${s.text('by')}`,
  'deed: thoughts added': (s) => `added ${s.times('count', 'thought', 'thoughts')} of ${s.text('by')}`,
  'deed: thought removed': () => 'removed a thought',
  'deed: plan kept': (s) => `kept ${namesOfPlanned[s.text('kind')] ?? s.text('kind')}`,
  'deed: plan removed': (s) => `removed ${namesOfPlanned[s.text('kind')] ?? s.text('kind')}`,
  'deed: list taken over': (s) => `took over ${s.times('count', 'treatment', 'treatments')} from a list`,
  'deed: report taken over': (s) => `took over ${s.times('count', 'statement', 'statements')} from a report`,
  'deed: photo kept': () => 'kept a photo',
  'deed: photo sorted': () => 'sorted a photo',
  'deed: photos sorted': (s) => `sorted ${s.times('count', 'photo', 'photos')}`,
  'deed: pairs of photos set': (s) => `laid one photo on another by ${s.times('pairs', 'pair', 'pairs')}`,
  'deed: pairs of photos removed': () => 'took away the pairs of two photos',
  'deed: photo removed': () => 'removed a photo',
  'deed: photo erased': () => 'erased a photo',
  'deed: name erased': () => 'erased a name',
  'deed: coverage measured': (s) => `measured ${s.kind('kind')} on a photo, ${s.method('way')}`,
  'deed: measurement removed': (s) => `removed the measurement of ${s.kind('kind')} on a photo, ${s.method('way')}`,
  'deed: outline drawn': (s) => `drew zone ${s.text('letter')} on the side ${s.text('side')}`,
  'deed: outline removed': (s) => `took the outline of zone ${s.text('letter')} off the side ${s.text('side')}`,
  'deed: folds said': (s) => `said how folded zone ${s.text('letter')} is`,
  'deed: picture scaled': (s) => `set the scale of the side ${s.text('side')}`,
  'deed: picture scale removed': (s) => `took the scale off the side ${s.text('side')}`,
  'deed: station of a side said': (s) => `said from where the side ${s.text('side')} was taken`,
  'deed: run-off drawn': (s) => `drew water from zone ${s.text('above')} to ${s.text('below')}`,
  'deed: run-off removed': (s) => `took away the water from zone ${s.text('above')} to ${s.text('below')}`,
  'deed: survey carried in': (s) => `carried in ${s.times('entries', 'entry', 'entries')}`,
  'deed: settled': () => 'settled two versions',
  'deed: rounds said one': () => 'said two rounds are one',
  'deed: rounds said apart': () => 'said two rounds are two',
} satisfies Readonly<Record<string, Sentence>>);
