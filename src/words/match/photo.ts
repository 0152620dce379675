// English text of photos that are not taken, and what to do about it.

export const PHOTO_FAULTS = {
  empty: 'There is nothing in this file. Choose another, or take the photo again.',
  unreadable: 'This file cannot be read. If it is in a cloud, download it to this phone first.',
  'no-photo': 'This file is no photo. Choose a JPEG, PNG, WebP, HEIC or AVIF.',
  'cut-short': 'This photo was cut short on its way. Choose it again, or take a new one.',
  'too-many-bytes': 'This file has over 50 megabytes. Choose a smaller photo.',
  'too-many-pixels': 'This photo has over 100 megapixels. Take it again at a lower resolution.',
  'not-opened': 'This browser cannot open this photo. Choose a JPEG, or take the photo again.',
} as const;
