/** What a reminder says: its title on a notification, and what to do. */
export const REMINDER_WORDS = {
  'next-coat': { title: 'Next coat', text: 'may go on now.' },
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
  'rub-out': { title: 'Rub out', text: 'Hard enough, as likely as not; try a small place first.' },
  'sink-check': { title: 'Check for sinking', text: 'Has the fill stopped going down?' },
  'jar-end': { title: 'Jar near its end', text: 'Use it or plan a new one.' },
  cartridge: { title: 'Change the cartridge', text: 'By the schedule, not by smell.' },
  rags: {
    title: 'Rags, overspray, filters',
    text: 'Oily rags into the sealed metal can with water; overspray and filters wetted and out. They can heat themselves until they burn.',
  },
  'customer-update': { title: 'Tell the owner', text: 'A draft is ready for you to change.' },
} as const;

/** "Next coat: Radio cabinet" */
export const reminderTitle = (title: string, about: string | undefined): string =>
  about === undefined ? title : `${title}: ${about}`;

/** "3 reminders" */
export const groupTitle = (count: number): string => `${count} reminders`;

/** "30 min left" */
export const minutesLeftWords = (minutes: number): string => `${minutes} min left`;

/** The answers on a notification. */
export const ANSWER_WORDS = { done: 'Done', later: '20 min later' } as const;

/** What stands in the calendar. */
export const CALENDAR_WORDS = {
  name: 'Coatwait bench',
  step: (step: string, piece: string): string => `${step}: ${piece}`,
  windowCloses: (piece: string): string => `Recoat window closes: ${piece}`,
  promised: (piece: string): string => `Promised: ${piece}`,
  promisedText: 'The day promised to the owner.',
  estimate: 'As planned when this was shared. The app has the latest estimate.',
} as const;
