/** What a reminder says: its title on a notification, and what to do. */
export const REMINDER_WORDS = {
  'next-coat': { title: 'Next coat', text: 'Look at the air first, then log it.' },
  'window-closing': { title: 'Recoat window closing', text: 'After it, scuff first, tomorrow.' },
  'stop-for-today': {
    title: 'Enough for today',
    text: 'That was the last coat of the day; leave it until tomorrow.',
  },
  'check-blush': { title: 'Look for blush', text: 'A milky bloom shows in the first minutes.' },
  'move-piece': { title: 'Move the piece', text: 'Out of the spray, where the air is clean.' },
  'next-drop': { title: 'Next drop', text: 'The fill has shrunk; add the next drop.' },
  scuff: { title: 'Scuff', text: 'Before the next coat.' },
  'rest-day': { title: 'Let it rest', text: 'Nothing to do. Do not touch it.' },
  'level-sand': { title: 'Level-sand', text: 'Try the paper first: it should powder, not gum.' },
  'rub-out': { title: 'Rub out', text: 'Try a small spot first.' },
  'sink-check': { title: 'Check for sinking', text: 'Has the fill stopped going down?' },
  'jar-end': { title: 'Jar near its end', text: 'Use it or plan a new one.' },
  cartridge: { title: 'Change the cartridge', text: 'By the schedule, not by smell.' },
  rags: {
    title: 'Rags, overspray, filters',
    text: 'Oily rags into the closed metal can with water; overspray and filters wetted and out. They can heat up by themselves and catch fire.',
  },
  'customer-update': { title: 'Tell the owner', text: 'A draft is ready for you to change.' },
  'weigh-card': { title: 'Weigh the test card', text: 'Weighing it now tells the most.' },
  'next-step': { title: 'Next step', text: 'The wait before it is over.' },
} as const;

/** Of an act whose time could not be worked out. */
export const PERHAPS_TEXT =
  'Its time could not be worked out. Try it where it will not show: a thumb leaves no print, paper powders.';

/** "Next coat: Radio cabinet" */
export const reminderTitle = (title: string, about: string | undefined): string =>
  about === undefined ? title : `${title}: ${about}`;

/** "3 reminders" */
export const groupTitle = (count: number): string => `${count} reminders`;

/** "30 min left" */
export const minutesLeftWords = (minutes: number): string => `${minutes} min left`;

/** The answers on a notification. */
export const ANSWER_WORDS = { done: 'Done', later: '20 min later' } as const;

/** A calendar keeps what it was given, also when the judge has changed its mind. */
const AS_JUDGED = 'As judged when written; the app has the latest.';

/** What stands in the calendar. */
export const CALENDAR_WORDS = {
  name: 'Coatwait bench',
  step: (step: string, piece: string): string => `${step}: ${piece}`,
  windowCloses: (piece: string): string => `Recoat window closes: ${piece}`,
  promised: (piece: string): string => `Promised: ${piece}`,
  promisedText: `The date promised to the owner. ${AS_JUDGED}`,
  held: 'Held: something has to be cleared first; the app says what.',
  dayEnd: `End of day: ${REMINDER_WORDS.rags.title.toLowerCase()}`,
  estimate: (clock: string, zone: string): string => `${clock}, ${zone}. ${AS_JUDGED}`,
} as const;

/** What stands in for a name where the thing is a jar or a cartridge that has gone. */
export const REMINDER_PAGE = {
  title: 'Reminders',
  label: 'Reminders due',
  missed: 'While you were away',
  due: 'Now',
  upcoming: 'Coming up',
  none: 'No reminders. Log a coat or plan a piece.',
  noneSoon: 'Nothing in the next seven days.',
  since: (when: string): string => `since ${when}`,
  more: (count: number): string => `${count} more`,
  done: 'Done',
  later: '20 min later',
  lay: 'Log it',
  dayEnd: 'End of day',
  tell: 'Open the draft',
  weigh: 'Weigh it',
  answered: (title: string): string => `${title}: done.`,
  putOff: (title: string): string => `${title}: again in 20 min.`,
  coatLaid: (piece: string): string => `Coat logged on ${piece}, same as the one before.`,
  noCoatBefore: 'This piece has no coat of that kind to copy yet. Log it on the page Log a coat.',
  settings: 'Reminder settings',
  laterShort: 'Later',
  allDone: 'All done',
  times: (title: string, count: number): string => `${title} × ${count}`,
  allAnswered: (title: string, count: number): string => `${title}: all ${count} answered.`,
} as const;

/** What each kind is called where it is switched. */
export const REMINDER_KIND_WORDS = {
  'next-coat': 'Next coat can go on',
  'window-closing': 'Recoat window closing: 60, 30, 10 min left',
  'stop-for-today': 'Enough coats for today',
  'check-blush': 'Look for blush',
  'move-piece': 'Move the piece out of the spray',
  'next-drop': 'Next drop of a fill',
  scuff: 'Scuff',
  'rest-day': 'Rest: leave it alone',
  'level-sand': 'Level-sand',
  'rub-out': 'Rub out',
  'sink-check': 'Check for sinking',
  'jar-end': 'Jar near its end',
  cartridge: 'Change the cartridge',
  rags: 'Rags, overspray, filters',
  'customer-update': 'Tell the owner',
  'weigh-card': 'Weigh the test card',
  'next-step': 'Filler, sealer, glue: the next step can begin',
} as const;

export const REMINDER_SETTINGS = {
  kinds: 'Which reminders',
  fireNote: 'This one is about fire. It cannot be switched off, and no quiet hours hold it back.',
  quiet: 'Quiet hours',
  quietText: 'Nothing sounds then, except for fire. What falls in them comes after, or just before.',
  quietOn: 'Quiet hours on',
  from: 'From',
  to: 'To',
  save: 'Save',
  saved: 'Saved.',
} as const;

/** What this phone can do, told as it is. */
export const ABILITY_WORDS = {
  title: 'What this phone can do',
  text: 'A web app cannot wake a phone by itself. This is what yours can do.',
  test: 'Test it now',
  tested: {
    shown: 'Test sent. If you noticed nothing, check the sound and what the phone lets this app do.',
    page: 'This phone shows no notification for this app. The line on the page and the calendar are what you have.',
  },
  testTitle: 'A test of the reminders',
  testText: 'This is how a reminder looks while the app is out of sight.',
  allow: 'Allow notifications',
  denied: 'Notifications were refused. Allow them in the settings of the browser for this page.',
  yes: 'Yes',
  no: 'No',
  perhaps: 'Perhaps',
  names: {
    open: 'While the app is on screen',
    background: 'While it is open, out of sight',
    closed: 'While it is closed',
    answers: 'Answer buttons on a notification',
    sound: 'Sound',
    vibration: 'Vibration',
    flash: 'Flash of the screen',
    awake: 'Screen that stays on (wall board)',
    calendar: 'Calendar file',
  },
  open: 'It shows a line on top of every page.',
  background: {
    granted: 'A notification. The phone may put the page to sleep after a while.',
    default: 'With notifications, once you allow them.',
    denied: 'No: notifications were refused for this page.',
    none: 'No: this browser has no notifications for this page. On an iPhone they come only to an app opened from the home screen.',
  },
  closed: {
    yes: 'Now and then: the browser looks when it sees fit, often only every few hours. Add what matters to the calendar.',
    no: 'No. Add the plan to the calendar: the calendar alerts you by itself.',
  },
  answers: {
    yes: 'Done and 20 min later stand on the notification.',
    no: 'No: a tap on the notification opens the app, and the answers are there.',
  },
  sound: { yes: 'Two tones, once you have tapped anything.', no: 'No: this browser plays no sound.' },
  vibration: { yes: 'Unless the phone is on silent.', no: 'No: this browser does not vibrate.' },
  flash: { yes: 'Three slow pulses.', no: 'A still frame, since you asked for less motion.' },
  awake: { yes: 'While the wall board is open.', no: 'No: set the phone not to sleep.' },
  calendar: { share: 'By the share sheet.', download: 'As a download.' },
} as const;
