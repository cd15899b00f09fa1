import { named } from './named';
import type { Source } from './source';

/** A way of washing, rubbing or treating a bronze that one may have at hand. */
export interface Method {
  readonly id: string;
  readonly name: string;
  /** What stands until somebody says otherwise of one work. */
  readonly usual: 'allowed' | 'forbidden';
  readonly why?: string;
  readonly source: Source;
}

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };
const procedure: Source = {
  text: 'US General Services Administration procedures for washing and cold waxing bronze, read on its pages.',
  sure: 'seen',
};
const memory: Source = { text: 'Conservation practice: about 0.5 to 1 % by volume, pH 6 to 8.', sure: 'from memory' };

export const methods: readonly Method[] = named('methods', [
  { id: 'hose', name: 'Garden hose, its own pressure', usual: 'allowed', source: procedure },
  { id: 'soft brush', name: 'Soft natural brush', usual: 'allowed', source: procedure },
  { id: 'neutral detergent', name: 'Neutral non-ionic detergent, rinsed off', usual: 'allowed', source: memory },
  { id: 'soft cloth', name: 'Soft cotton cloth', usual: 'allowed', source: procedure },
  { id: 'cold wax', name: 'Cold paste wax, thin, buffed', usual: 'allowed', source: procedure },
  {
    id: 'pressure washer',
    name: 'Pressure washer',
    usual: 'forbidden',
    why: 'Drives water into joints and lifts old layers.',
    source: practice,
  },
  {
    id: 'abrasive pads',
    name: 'Abrasive pads, steel wool, wire brush',
    usual: 'forbidden',
    why: 'Scratches, and steel leaves rust.',
    source: practice,
  },
  { id: 'polish', name: 'Metal polish', usual: 'forbidden', why: 'Takes metal and colour away.', source: practice },
  {
    id: 'acid',
    name: 'Acids, vinegar, rust remover',
    usual: 'forbidden',
    why: 'Eat colour and metal.',
    source: practice,
  },
  { id: 'ammonia', name: 'Ammonia, window cleaner', usual: 'forbidden', why: 'Dissolves copper.', source: practice },
  { id: 'bleach', name: 'Bleach, chlorine', usual: 'forbidden', why: 'Brings chloride.', source: practice },
  {
    id: 'silicone',
    name: 'Silicone, car polish',
    usual: 'forbidden',
    why: 'Cannot be got off; nothing holds on it.',
    source: practice,
  },
  {
    id: 'hot air over lacquer',
    name: 'Hot air over lacquer',
    usual: 'forbidden',
    why: 'Softens and clouds it.',
    source: practice,
  },
  {
    id: 'torch by staff',
    name: 'Torch or hot wax by staff',
    usual: 'forbidden',
    why: 'Work for people licensed for it.',
    source: practice,
  },
]);

const byId = new Map(methods.map((method) => [method.id, method]));

/** The row of a method, or undefined for a code this version does not know. */
export const methodOf = (id: string): Method | undefined => byId.get(id);
