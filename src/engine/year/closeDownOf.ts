import type { Thing } from '../record';
import { type ClosedFor, closeDownSteps } from '../trade';

/** One line of the winter list. */
export interface ClosedStep {
  /** What is ticked: the step, and the work it is at. */
  readonly key: string;
  readonly id: string;
  readonly name: string;
  /** Missing: of the whole garden. */
  readonly work?: string;
}

interface ToClose {
  readonly work: string;
  readonly zones: readonly Thing<'zone'>[];
  readonly inserts: number;
  /** Metres of water to stand in, where known. */
  readonly water?: number | undefined;
}

/** What about a work asks for a step, by how its zones lie. */
const asks = ({ zones, inserts, water }: ToClose): ReadonlySet<ClosedFor> => {
  const lies = (code: string): boolean => zones.some(({ body }) => body.exposure.includes(code));
  const asked: readonly (readonly [ClosedFor, boolean])[] = [
    ['every work', true],
    ['basin', lies('waterline') || (water ?? 0) > 0],
    ['sprinkler', lies('sprinkler')],
    ['ponding', lies('ponding')],
    ['tree', lies('tree')],
    ['road salt', lies('road salt')],
    ['inserts', inserts > 0],
  ];
  return new Set(asked.filter(([, so]) => so).map(([what]) => what));
};

/** The winter close-down: what is done once for the garden first, then work by work. */
export const closeDownOf = (works: readonly ToClose[]): readonly ClosedStep[] => [
  ...closeDownSteps.filter((step) => step.for === 'garden').map(({ id, name }) => ({ key: id, id, name })),
  ...works.flatMap((one) => {
    const asked = asks(one);
    return closeDownSteps
      .filter((step) => step.for !== 'garden' && asked.has(step.for))
      .map(({ id, name }) => ({ key: `${id} ${one.work}`, id, name, work: one.work }));
  }),
];
