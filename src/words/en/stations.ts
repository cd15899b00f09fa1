/** Words of the screens of stations. */
export const stations = {
  title: 'stations',
};
