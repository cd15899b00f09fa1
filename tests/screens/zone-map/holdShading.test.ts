import { expect, it } from 'vitest';
import { adviceOf, holdsOf, livesOf } from '../../../src/engine/hold';
import { holdShading } from '../../../src/screens/zone-map/shading/holdShading';
import { demoDay, saltlamp } from '../../engine/hold/saltlamp';
import { withStopWord } from '../../engine/hold/withStopWord';

const all = saltlamp.map((record) => ({ record, zones: holdsOf(record, demoDay) }));
const lives = livesOf(all, 1);

it('the map names the day to wax again, and none where a stop word stands', () => {
  const told = all
    .map(({ record, zones }) => ({ record, holds: zones, advice: adviceOf(record, zones, lives, demoDay) }))
    .find(({ advice }) => advice.some((one) => one.waxAgainBy && !one.asksConservator))!;
  const { zone } = told.advice.find((one) => one.waxAgainBy && !one.asksConservator)!;
  expect(holdShading(told).of(zone).said).toMatch(/, wax again by \d/);
  const { said } = holdShading({ ...told, record: withStopWord(told.record, zone) }).of(zone);
  expect(said).toContain('a stop word was seen here');
  expect(said).not.toContain('wax again by');
});
