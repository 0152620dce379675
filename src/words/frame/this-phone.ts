// English text of what this browser and address can and cannot do for the logbook.

export const NOT_SECURE = {
  title: 'This address is not https',
  text: 'What you log is kept on this phone, but the app cannot open without the network, cannot be installed, and cannot send notifications. Serve it over https; until then save a backup often.',
} as const;

export const THIS_PHONE = {
  title: 'This phone',
  secure: 'Opens without a network: the app is kept on this phone.',
  notSecure: 'Does not open without a network: this address is not https.',
  noWorker: 'Does not open without a network: this browser (or a private window) does not keep the app.',
  /** A site opened in the browser and left alone for a week of browser use loses what it stored; an app on the home screen is left alone. */
  iphoneBrowser:
    'On an iPhone the browser may clear what a site keeps when you have not opened it for some days. Add the app to the home screen: it is left alone there.',
  iphoneOwn:
    'The icon on the home screen starts with an empty logbook of its own. Save a backup here first, then restore it there.',
  installed: 'Opened from the home screen.',
} as const;
