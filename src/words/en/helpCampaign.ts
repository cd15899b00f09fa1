import { spoken } from '../tongue';

/** Help on a treatment by others, from the first doubt to the last look. */
export const helpCampaign = spoken('helpCampaign', 'helpCampaign', {
  'sculpture-campaigns': {
    title: 'Campaigns',
    what: 'The treatments of one work, and before them the causes: what feeds the damage is dealt with first.',
    first: 'Answer the causes worth looking for here. Open a campaign only when care is not enough any more.',
    from: 'The causes proposed fit how the zones lie and what reaches them.',
  },
  campaign: {
    title: 'One campaign',
    what: 'Where the treatment stands, what is still asked for at this step, and all its papers and records.',
    first:
      'Read “Now”. Do what is asked for; go on to the next step when it is there, or in spite of it with a reason.',
    from: 'Each step looks into the record for what it needs. You go on, nothing goes on by itself.',
  },
  'campaign-quantities': {
    title: 'Schedule of quantities',
    what: 'The job as numbered lines, one per zone and work, which every bidder prices alike.',
    first: 'Let the lines be made from the zones, then strike what is not wanted and add what is missing.',
    from: 'Areas of the survey, good enough to price by. Each bidder measures on the visit; paid is what is measured again.',
  },
  'campaign-bids': {
    title: 'Bids',
    what: 'The bids line by line beside each other, with what to ask about; under them the score sheet: weights, each scorer’s marks, totals with their spread.',
    first:
      'Set weights and scorers before bids come. Enter each bid along the schedule; read the questions before the totals.',
    from: 'Arithmetic is done again here. Lines far from the middle, and areas far from the survey, are pointed out.',
  },
  'campaign-papers': {
    title: 'Is it complete?',
    what: 'The request, a proposal or the final report, point by point: there, missing, not needed.',
    first: 'Go through it with the paper beside you. What is missing makes a letter you can send.',
    from: 'The lists follow what published guides ask such papers to say.',
  },
  'campaign-approvals': {
    title: 'Approvals and agreed colour',
    what: 'Who said yes to what, with photo, words and signature, before work went on.',
    first: 'Write the sample area first: where, how large, how it was done, who signs.',
    from: 'The people named. The agreed colour becomes the measure for all later readings.',
  },
  'campaign-layers': {
    title: 'Layers of colour',
    what: 'What was laid on which zone, in what order, as the one who did it says.',
    first: 'Ask to stand beside them one morning and write each layer as it is laid.',
    from: 'The word of the studio. Matching the colour in ten years begins here.',
  },
  'campaign-hot-work': {
    title: 'Days of hot work',
    what: 'One card for each day with a flame or hot metal.',
    first: 'Make the card the day before: permit, watcher, clear zone. Without a permit nothing is lit.',
    from: 'Published rules stand at the foot with their source; yours may ask for more.',
  },
  'hot-work': {
    title: 'One day of hot work',
    what: 'Permit, watcher, temperatures at the inserts, and the watch after the flame. The day cannot close without the photo after it.',
    first:
      'Fill in the top before anything is lit. Write temperatures every few minutes; the limit stands beside them.',
    from: 'Your readings. The timer is a reminder and no safety device: a tablet sleeps.',
  },
});
