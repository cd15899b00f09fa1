import { namedUnder } from './named';
import type { Source } from './source';

/** One number that speaks for or against washing or waxing now. */
export interface WeatherRule {
  readonly id: string;
  readonly name: string;
  readonly value: number;
  readonly unit: 'K' | '%' | 'h' | 'degC' | 'hour of the day';
  readonly source: Source;
}

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };

const coating: Source = {
  text: 'Coating practice told with ISO 8502-4 and ISO 12944-7, read on trade pages. ISO 8502-4 itself reckons how likely condensation is; the 3 K rule is practice built on it.',
  sure: 'seen',
};

const window: Source = { text: 'Window of cold waxing, conservation practice.', sure: 'from memory' };
const choice: Source = { text: 'Our own choice.', sure: 'own choice' };
const hand: Source = {
  text: 'Our own assumption of what instruments held in the hand err by; the sheet of yours may say better.',
  sure: 'own choice',
};

export const weatherRules = namedUnder('weatherRules', {
  margin: { id: 'margin', name: 'Surface over the dew point, at least', value: 3, unit: 'K', source: coating },
  humidity: { id: 'humidity', name: 'Relative humidity, below', value: 85, unit: '%', source: coating },
  dry: { id: 'dry', name: 'Dry for, at least', value: 24, unit: 'h', source: practice },
  coldest: { id: 'coldest', name: 'Surface for cold wax, from', value: 10, unit: 'degC', source: window },
  hottest: { id: 'hottest', name: 'Surface for cold wax, to', value: 35, unit: 'degC', source: window },
  frost: { id: 'frost', name: 'No water on bronze at or below', value: 0, unit: 'degC', source: window },
  /** What is still too wet at this hour is not for today. */
  lastStart: { id: 'lastStart', name: 'Last start of a coat', value: 18, unit: 'hour of the day', source: choice },
  airError: { id: 'airError', name: 'Thermometer in the air, give or take', value: 0.5, unit: 'K', source: hand },
  humidityError: { id: 'humidityError', name: 'Hygrometer, give or take', value: 3, unit: '%', source: hand },
  surfaceError: { id: 'surfaceError', name: 'Surface thermometer, give or take', value: 1, unit: 'K', source: hand },
} as const satisfies Readonly<Record<string, WeatherRule>>);
