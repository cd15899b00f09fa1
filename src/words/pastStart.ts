/** The sentences of rounds, of carrying and of all that is worked out: no part of the start, they come with the first screen past it. */
import { learn } from './en/reasons';
import { reasonsOfAgreement } from './en/reasonsOfAgreement';
import { reasonsOfBag } from './en/reasonsOfBag';
import { reasonsOfBring } from './en/reasonsOfBring';
import { reasonsOfBudget } from './en/reasonsOfBudget';
import { reasonsOfCampaign } from './en/reasonsOfCampaign';
import { reasonsOfCare } from './en/reasonsOfCare';
import { reasonsOfChange } from './en/reasonsOfChange';
import { reasonsOfColour } from './en/reasonsOfColour';
import { reasonsOfCondition } from './en/reasonsOfCondition';
import { reasonsOfExchange } from './en/reasonsOfExchange';
import { reasonsOfEye } from './en/reasonsOfEye';
import { reasonsOfFirmness } from './en/reasonsOfFirmness';
import { reasonsOfFolder } from './en/reasonsOfFolder';
import { reasonsOfFund } from './en/reasonsOfFund';
import { reasonsOfHeat } from './en/reasonsOfHeat';
import { reasonsOfHold } from './en/reasonsOfHold';
import { reasonsOfInStep } from './en/reasonsOfInStep';
import { reasonsOfLife } from './en/reasonsOfLife';
import { reasonsOfMoney } from './en/reasonsOfMoney';
import { reasonsOfOptions } from './en/reasonsOfOptions';
import { reasonsOfPhoto } from './en/reasonsOfPhoto';
import { reasonsOfRound } from './en/reasonsOfRound';
import { reasonsOfSite } from './en/reasonsOfSite';
import { reasonsOfTrend } from './en/reasonsOfTrend';
import { reasonsOfWatch } from './en/reasonsOfWatch';
import { reasonsOfWeather } from './en/reasonsOfWeather';
import { reasonsOfYear } from './en/reasonsOfYear';

learn({
  ...reasonsOfAgreement,
  ...reasonsOfBag,
  ...reasonsOfBring,
  ...reasonsOfBudget,
  ...reasonsOfCare,
  ...reasonsOfCampaign,
  ...reasonsOfChange,
  ...reasonsOfCondition,
  ...reasonsOfExchange,
  ...reasonsOfEye,
  ...reasonsOfFirmness,
  ...reasonsOfFolder,
  ...reasonsOfFund,
  ...reasonsOfHeat,
  ...reasonsOfHold,
  ...reasonsOfInStep,
  ...reasonsOfLife,
  ...reasonsOfColour,
  ...reasonsOfMoney,
  ...reasonsOfOptions,
  ...reasonsOfPhoto,
  ...reasonsOfRound,
  ...reasonsOfSite,
  ...reasonsOfTrend,
  ...reasonsOfYear,
  ...reasonsOfWatch,
  ...reasonsOfWeather,
});
