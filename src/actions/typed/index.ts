export { forgetTyped, holdTyped, type Typed, type TypedHeld, typedAt, typedNotKept } from './typed';
