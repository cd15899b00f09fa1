import type { ConditionReason } from '../../engine/condition';
import { spoken } from '../tongue';
import { eyeRests } from './reasonsOfEye';
import type { Sentences } from './sentence';

/** Why a score, a class or a place in the order of need is what it is. */
export const reasonsOfCondition = spoken('reasonsOfCondition', 'reasonsOfCondition', {
  'score: kind not known': (s) => `${s.kind('kind')} is a kind this version does not know: shown, not scored.`,
  'score: cleared': (s) => `${s.kind('kind')} is no longer there and takes nothing off.`,
  'score: looked, none there': (s) => `Looked for ${s.kind('kind')}: none there.`,
  'score: dirt, look again after washing': (s) =>
    `${s.kind('kind')} is taken for dirt and takes nothing off. Look again after washing.`,
  'score: stain takes its own hazard': (s) =>
    `${s.kind('kind')} is a stain from above: it takes the hazard of a stain, ${s.number('hazard', 2)}.`,
  'score: no coverage given': (s) =>
    `No coverage was given for ${s.kind('kind')}: it counts as the smallest step, and how much it really is stays open.`,
  'score: no count given': (s) => `No count was given for ${s.kind('kind')}: it counts as one.`,
  'score: share of the photo': (s) =>
    `The coverage of ${s.kind('kind')} (${s.method('method')}) is the share of the photo, not of the whole zone.`,
  'score: range from coverage only': () => 'The range comes from the error of the coverages only.',
  'score: own eye': (s) =>
    `The range rests on this surveyor’s own error, not on the usual one: known from ${eyeRests(s)}.`,
  'score: nothing found': () => 'Looked, and nothing found.',
  'score: biggest loss': (s) => `The biggest loss is ${s.kind('kind')}: ${s.number('loss', 2)}.`,
  'score: active area held to the zone': (s) =>
    `The parts of ${s.active('what')} add up to more than a zone has, so they are held to its area.`,
  'score: not visited': () => 'Nobody has been to this zone in this round.',
  'score: not looked': (s) => `Not looked at: ${s.notLooked('why')}.`,
  'score: carried': (s) => `Carried over from ${s.thing('from')}, not judged again.`,
  'score: partly carried': (s) =>
    `${s.times('carried', 'finding is', 'findings are')} carried over and ${s.times('judged', 'is', 'are')} judged afresh, so the zone has no index of its own.`,
  'score: no zone looked at': () => 'No zone was looked at in this round, so there is no index.',
  'score: share seen': (s) =>
    `${s.number('seen')} of ${s.number('zones')} zones looked at, ${s.number('percent')} % of the area.`,
  'score: weakest zone': (s) => `The weakest zone is ${s.thing('zone')}, at ${s.number('index', 0)}.`,
  'score: day effect counted once': (s) =>
    `Light and damp of the day shift all zones together: ${s.number('points', 1)} points of the range.`,
  'score: two versions, not settled': (s) =>
    `${s.times('things', 'thing has', 'things have')} two versions that nobody has settled yet; the leading one counts meanwhile.`,
  'score: things not known': (s) =>
    `${s.times('things', 'thing is', 'things are')} of a kind this version does not know, and not scored.`,
  'coverage: more than the whole zone': (s) =>
    `${s.kinds('kinds')} cannot lie on the same spot, yet together they cover ${s.number('percent')} % of the zone. Check the coverages.`,
  'coverage: perhaps more than the whole zone': (s) =>
    `${s.kinds('kinds')} cannot lie on the same spot, and together they come to ${s.number('percent')} %. Check whether one is too high.`,

  'class: no zone to judge': () => 'No zone was looked at, so there is nothing to judge.',
  'class: no finding': () => 'Looked, and nothing found.',
  'class: index at or over': (s) => `The index, ${s.number('index', 0)}, is at or over ${s.number('limit', 0)}.`,
  'class: index under': (s) => `The index, ${s.number('index', 0)}, is under ${s.number('limit', 0)}.`,
  'class: stop word': (s) => `${s.kind('kind')} is a stop word: ask the conservator.`,
  'class: severe, active, metal at stake': (s) =>
    `${s.kind('kind')} is severe and active, and puts metal at stake (hazard ${s.number('hazard', 2)}).`,
  'class: weakest zone pulls down': (s) =>
    `The weakest zone, ${s.thing('zone')}, stands at CC${s.number('condition')}.`,
  'class: person check open': (s) => `A person check is open since ${s.day('opened')}: ${s.text('what')}.`,
  'class: could hurt someone, no person check yet': (s) =>
    `${s.kind('kind')} could hurt someone, and no person check stands yet. Open one.`,
  'class: kind is urgent': (s) => `${s.kind('kind')} presses by itself.`,
  'class: green clearly worse': () => 'The green in the metal is clearly worse than at the last comparable round.',
  'class: hold proven shorter': () =>
    'The coating holds shorter here from one time to the next: proven, not by chance.',
  'class: forecast to cross the action level': (s) =>
    `Carried on as now, the index falls below the action level of ${s.number('actionLevel')} by the next round.`,
  'class: coating past its expected hold': () => 'The coating is past the time it was expected to hold.',
  'class: index under action level': (s) =>
    `The index, ${s.number('index', 0)}, is under the action level of ${s.number('actionLevel', 0)}.`,
  'class: active in the metal': (s) =>
    `${s.kind('kind')} is active in the metal over ${s.number('percent', 1)} % of the zone.`,
  'class: active in the metal, told by count or presence': (s) => `${s.kind('kind')} is active in the metal.`,
  'class: beading': (s) => `Water on the surface: ${s.beading('beading')}. The film no longer keeps water off.`,
  'class: nothing presses': () => 'Nothing presses.',
  'class: highest of its zones': (s) => `The highest of its zones: ${s.thing('zone')}.`,
  'not yet known': (s) => `Not yet known: ${s.unknown('what')}.`,
  'class: kind asks for test or repair': (s) => `${s.kind('kind')} asks for a test, a local treatment or a repair.`,
  'class: kind asks for care': (s) => `${s.kind('kind')} asks for washing and waxing.`,
  'class: severe and active': (s) => `${s.kind('kind')} is severe and active.`,
  'class: wash and look again': (s) => `${s.kind('kind')} may be dirt: wash, and look again.`,
  'class: nothing to do': () => 'Nothing asks for more than looking.',
  'class: ask whether major treatment is due': (s) =>
    `Ask a conservator whether major treatment is due: ${
      s.text('why') === 'share'
        ? `${s.percent('value')} of the area seen shows strong signs`
        : s.text('why') === 'index'
          ? `the index of the whole work is ${s.number('value')}`
          : `the signs here are strong, at an index of ${s.number('value')}`
    }.`,

  'need: urgency': (s) =>
    s.text('setBy') === ''
      ? `Urgency class UC${s.number('urgency')}, proposed by rule.`
      : `Urgency class UC${s.number('urgency')}, set by ${s.text('setBy')}.`,
  'need: burden': (s) =>
    `Burden ${s.number('burden', 0)}: ${s.area('m2')} with a weight of ${s.number('significance', 1)}, at an index of ${s.number('index', 0)}.`,
  'need: growth': (s) =>
    `Its trend adds ${s.number('growth')} to the burden by the next round, if care goes on as now.`,
  'need: before the next by urgency': () => 'Before the next because its urgency class is higher.',
  'need: before the next by burden': () => 'Before the next because its burden is larger.',
  'need: before the next by index': () => 'Before the next because its index is lower.',
  'need: level with the next': () => 'Level with the next: nothing tells them apart.',
  'need: last': () => 'Last in the order.',
} satisfies Sentences<ConditionReason>);
