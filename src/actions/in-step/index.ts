export { type InStep, inStepOf } from './inStepOf';
export type { Fault, Joined, Stepped } from './joined';
export { keepInStep } from './keepInStep';
export { type Doing, type Stepping, step } from './step';
export { joinFolder, type SwitchedOn, switchOff, switchOnPicked, switchOnServer } from './switching';
