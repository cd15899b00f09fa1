import { weatherRules } from '../../engine/trade';
import { factSaid, number, w } from '../../words';
import { Fold } from '../parts/Fold';

const words = w.careDay;

/** Each limit with its source: which are published, which practice, which our own. */
export function WhereLimitsComeFrom() {
  return (
    <Fold show={words.limits} hide={words.limitsHide} alsoOnPaper whenOpened>
      <ul>
        {Object.values(weatherRules).map(({ id, name, value, unit, source }) => (
          <li key={id}>
            {words.limitOf(name, number(value, 1), words.limitUnits[unit])}
            <span className="soft line-detail">
              {factSaid(source.text)}
              {source.sure === 'from memory' && ` ${words.limitMemory}`}
            </span>
          </li>
        ))}
        <li>
          {words.dewPoint}
          <span className="soft line-detail">{words.dewPointFrom}</span>
        </li>
      </ul>
    </Fold>
  );
}
