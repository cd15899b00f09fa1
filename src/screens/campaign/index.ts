export { ApprovalsScreen } from './ApprovalsScreen';
export { BidsScreen } from './BidsScreen';
export { CampaignScreen } from './CampaignScreen';
export { CampaignsScreen } from './CampaignsScreen';
export { CompletenessScreen } from './CompletenessScreen';
export { QuantitiesScreen } from './QuantitiesScreen';
