/** Words of the screens of photos. */
export const photos = {
  title: 'photos',
};
