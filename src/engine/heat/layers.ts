import type { BodyOf, Thing } from '../record';

type Layer = Thing<'layer'>;

/** Layers of a zone in the order they were laid; of one number, the earlier said first. */
export const layersOf = (layers: readonly Layer[], zone: string): Layer[] =>
  layers
    .filter(({ body }) => body.zone === zone)
    .sort((a, b) => a.body.order - b.body.order || (a.thing < b.thing ? -1 : 1));

/** The number of the next layer of a zone, from 1. */
export const nextOrder = (layers: readonly Layer[], zone: string): number =>
  (layersOf(layers, zone).at(-1)?.body.order ?? 0) + 1;

const saidAt = ({ body, thing }: Layer): string => `${body.date} ${body.time ?? ''} ${thing}`;

/** The layer that would be the next one of this zone, in the zone that was worked on last before it; none where it has no such layer. */
export const sameAsBefore = (layers: readonly Layer[], zone: string): Layer | undefined => {
  const order = nextOrder(layers, zone);
  return layers
    .filter(({ body }) => body.zone !== zone && body.order === order)
    .sort((a, b) => (saidAt(a) < saidAt(b) ? 1 : -1))[0];
};

/** The same solution, strength, tool and passes in another zone. What was measured or photographed there is not taken over. */
export const sameIn = (
  layer: Layer,
  zone: string,
  when: { readonly date: string; readonly time: string },
): BodyOf<'layer'> => {
  const { sculpture, campaign, order, solution, strength, tool, passes, rinsed, by, air, date } = layer.body;
  const body = { sculpture, campaign, zone, order, ...when, solution, strength, tool, passes, rinsed, by };
  // The air of another day is not the air of this one.
  return { ...body, ...(date === when.date ? { air } : {}), sameAs: layer.thing };
};
