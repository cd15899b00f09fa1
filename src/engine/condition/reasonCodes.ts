import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const conditionReasons = {
  // One finding.
  'score: kind not known': ['kind'],
  'score: cleared': ['kind'],
  'score: looked, none there': ['kind'],
  'score: dirt, look again after washing': ['kind'],
  'score: stain takes its own hazard': ['kind', 'hazard'],
  'score: no coverage given': ['kind'],
  'score: no count given': ['kind'],
  'score: share of the photo': ['kind', 'method'],
  // One zone.
  'score: range from coverage only': [],
  'score: own eye': ['sd', 'pairs', 'patches'],
  'score: nothing found': [],
  'score: biggest loss': ['kind', 'loss'],
  'score: active area held to the zone': ['what'],
  // Why a zone has no index.
  'score: not visited': [],
  'score: not looked': ['why'],
  'score: carried': ['from'],
  'score: partly carried': ['carried', 'judged'],
  // One sculpture.
  'score: no zone looked at': [],
  'score: share seen': ['percent', 'seen', 'zones'],
  'score: weakest zone': ['zone', 'index'],
  'score: day effect counted once': ['points'],
  'score: two versions, not settled': ['things'],
  'score: things not known': ['things'],
  // Kinds that exclude each other.
  'coverage: more than the whole zone': ['kinds', 'percent'],
  'coverage: perhaps more than the whole zone': ['kinds', 'percent'],
  // Condition class.
  'class: no zone to judge': [],
  'class: no finding': [],
  'class: index at or over': ['index', 'limit'],
  'class: index under': ['index', 'limit'],
  'class: stop word': ['kind'],
  'class: severe, active, metal at stake': ['kind', 'hazard'],
  'class: weakest zone pulls down': ['zone', 'condition'],
  // Urgency class.
  'class: person check open': ['what', 'opened'],
  'class: could hurt someone, no person check yet': ['kind'],
  'class: kind is urgent': ['kind'],
  'class: green clearly worse': [],
  'class: hold proven shorter': [],
  'class: forecast to cross the action level': ['actionLevel'],
  'class: coating past its expected hold': [],
  'class: index under action level': ['index', 'actionLevel'],
  'class: active in the metal': ['kind', 'percent'],
  'class: active in the metal, told by count or presence': ['kind'],
  'class: beading': ['beading'],
  'class: nothing presses': [],
  'class: highest of its zones': ['zone'],
  'not yet known': ['what'],
  // Recommendation class.
  'class: kind asks for test or repair': ['kind'],
  'class: kind asks for care': ['kind'],
  'class: severe and active': ['kind'],
  'class: wash and look again': ['kind'],
  'class: nothing to do': [],
  'class: ask whether major treatment is due': ['why', 'value'],
  // Order of need.
  'need: urgency': ['urgency', 'setBy'],
  'need: burden': ['burden', 'm2', 'significance', 'index'],
  'need: growth': ['growth'],
  'need: before the next by urgency': [],
  'need: before the next by burden': [],
  'need: before the next by index': [],
  'need: level with the next': [],
  'need: last': [],
} as const satisfies Record<string, readonly string[]>;

export type ConditionReason = keyof typeof conditionReasons;

/** A reason of this folder, with exactly the parameters its code takes. */
export const because = <C extends ConditionReason>(
  code: C,
  ...[params]: (typeof conditionReasons)[C] extends readonly []
    ? []
    : [Record<(typeof conditionReasons)[C][number], string | number>]
): Reason => ({ code, params: params ?? {} });
