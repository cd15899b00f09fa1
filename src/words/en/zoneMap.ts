/** Words of the screens of zone-map. */
export const zoneMap = {
  title: 'zone-map',
};
