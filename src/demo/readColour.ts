import { addReading, type Desk, setAgreedColour } from '../actions';
import { tableTop } from './garden/colours';
import { done } from './walkRound';

const asLab = ([L, a, b]: readonly [number, number, number]) => ({ L, a, b });

/** A colour agreed, and each reading of it, on its day. */
export const colourEvents = (desk: Desk, work: string, sculpture: string, zones: ReadonlyMap<string, string>) => {
  const zone = zones.get(tableTop.zone);
  if (work !== tableTop.work || !zone) return [];
  const { agreed, readings, position } = tableTop;
  return [
    {
      day: agreed.date,
      run: async () => {
        const { date, name, value, conditions } = agreed;
        const by = 'Steward and foundry team';
        const kept = 'Drawer 2 of the plan chest';
        await done(
          setAgreedColour(desk, sculpture, { zone, name, date, by, kept, value: asLab(value), ...conditions }),
        );
      },
    },
    ...readings.map(({ date, values, conditions }) => ({
      day: date,
      run: async () => {
        const said = {
          instrument: 'Lent by the conservator',
          calibration: 'White tile, that morning',
          surface: 'dry' as const,
        };
        const fields = { zone, date, position, values: values.map(asLab), ...conditions, ...said };
        await done(addReading(desk, sculpture, fields));
      },
    })),
  ];
};
