// English text of the room, the filters and the end of the day.

export const ROOM_WORDS = {
  title: 'Solvent in the room',
  intro:
    'How much vapour a session puts into the room, and how much clean air it calls for. A rough guide: it proves nothing about your room.',
  room: 'Your room',
  none: 'Describe the room once and the figures appear here.',
  describe: 'Describe the room',
  change: 'Change',
  volume: 'Volume',
  volumeHint: 'Length × width × height.',
  flow: 'Extraction',
  flowFrom: 'This figure is',
  flowOrigins: {
    measured: { label: 'Measured', hint: 'by an anemometer at the face' },
    rated: { label: 'Rated', hint: 'from the fan’s label' },
  },
  ratedNote: 'A rated fan moves less once filters and ducts are on it.',
  mixing: 'Mixing factor',
  mixingHint: '1 perfect, 10 very poor. A shop with one fan in a window is 5 or more (a judgement).',
  limit: 'Lower explosive limit of the product',
  limitHint: 'From its data sheet, section 9. Empty: worked out from the solvents.',
  save: 'Save the room',
  saved: 'Room saved.',
  session: 'Planned session',
  amount: 'Mix to spray',
  minutes: 'Over',
  needJar: 'Fill a jar under Mix first.',
  released: (mass: string): string => `It gives ${mass} of solvent to the air:`,
  waterOnly: 'It gives no organic solvent to the air.',
  fire: 'Against fire',
  fireNeed: (flow: string, air: string): string =>
    `${flow} of clean air, ${air} in all, keeps the average under 25 % of the lower explosive limit.`,
  fireLel: (lel: string): string => `Limit of the vapours together: ${lel} by volume.`,
  closed: (share: string): string =>
    `In the closed room, evenly mixed, all of it would come to ${share} of the limit.`,
  health: 'For breath',
  healthNeed: (flow: string, mixing: string): string =>
    `${flow} would dilute the vapours to their occupational limits as a mixture, with a mixing factor of ${mixing}.`,
  own: (flow: string, how: string): string => `Your extraction: ${flow} (${how}).`,
  below: 'Below the guide figure',
  above: 'Above the guide figure; that is no proof',
  left: (names: string): string => `Left out, for want of a figure: ${names}.`,
  assumptions: 'What this assumes',
  assumptionList: [
    'All solvent of the mix goes into the air, evenly over the session, and mixes with all of the room. It does not: near the gun and along the floor it is far denser.',
    'Mist is not counted. It burns below the limit of the vapour, and dilution does not answer it.',
    'Fire: 4 (100 − LEL) V / LEL, the note to table G-11 of 29 CFR 1910.94(c); limit of a blend after Le Chatelier.',
    'Breath: K times vapour over limit, each solvent added (ACGIH dilution formula; 29 CFR 1910.1000(d)(2)). The stricter of the OSHA and NIOSH averages is taken. A mask is another matter, and is not judged here.',
  ],
  clearance: 'Clearance',
  endSpraying: 'I put the gun down',
  clearing: (when: string): string => `Vapour down to 1 % of what it was by ${when}`,
  clearingNote: 'If the extraction keeps running. A wet piece and rags go on giving off vapour.',
  left1: (span: string): string => `${span} to go`,
  cleared: (when: string): string => `The count ended ${when}.`,
  noSpraying: 'Log when you put the gun down, and the count-down starts here.',
} as const;

export const END_WORDS = {
  title: 'Spraying ended',
  lasted: 'It lasted',
  lastedHint: 'Time with the mask on.',
  when: 'When the gun was put down',
  filters: 'Worn and in use',
  noFilters: 'No cartridges in the log: open one under Filters and its clock runs.',
  log: 'Log it',
  logged: 'Spraying logged. Leave the ventilation on.',
} as const;

export const FILTER_WORDS = {
  title: 'Filters and cartridges',
  none: 'None in the log',
  noneText:
    'Log a cartridge when you open its bag. Its clock then counts the minutes worn and the days open, against the schedule you set.',
  open: 'Open a new one',
  openTitle: 'Open a filter',
  part: 'What is it?',
  parts: {
    cartridge: { label: 'Cartridge', hint: 'organic vapour' },
    prefilter: { label: 'Prefilter', hint: 'particles' },
    'booth-filter': { label: 'Booth filter', hint: 'overspray' },
  },
  name: 'Name',
  nameHint: 'As on the bag: maker’s type, size.',
  wear: 'Change after wear of',
  openFor: 'Change after being open for',
  scheduleHint: 'Yours to set, from the maker’s data for your solvents. Empty: no limit by this.',
  basis: 'What the schedule rests on',
  basisHint: '29 CFR 1910.134(d)(3)(iii) asks for objective data; write where yours are from.',
  save: 'Put it in use',
  saved: (name: string): string => `${name} is in use.`,
  worn: (span: string): string => `worn ${span}`,
  days: (days: number): string => (days === 1 ? 'open 1 day' : `open ${days} days`),
  of: (schedule: string): string => `schedule ${schedule}`,
  states: {
    fresh: 'Within its schedule',
    soon: 'Change soon',
    due: 'Change it now',
    'no-schedule': 'No schedule set',
  },
  throwOut: 'Thrown out',
  thrownOut: (name: string): string => `${name} is out of use.`,
  spraying: 'Log a spraying',
  never:
    'Never by smell: many vapours pass a spent cartridge before the nose notices. Whether a mask is enough is for your programme and a licensed person to say.',
} as const;

export const DAY_END_WORDS = {
  title: 'End of the day',
  confirmed: (when: string): string => `Confirmed ${when}.`,
  logged: 'End of the day logged.',
} as const;

export const CAUTIONS_PAGE = {
  title: 'Cautions',
  log: 'Confirmed',
  none: 'Nothing confirmed yet.',
  entry: (act: string, count: number): string => `${act}: ${count} confirmed`,
  acts: {
    spray: 'Spraying',
    brush: 'Brush, pad or fill',
    mix: 'Mixing',
    sand: 'Sanding',
    'end-day': 'End of the day',
  },
} as const;
