/** The plan of a year: time, order of visits, lists, briefing. */
export {};
