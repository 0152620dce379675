// English text of a toner that goes on a piece pass by pass.

const passes = (count: number): string => `${count} ${count === 1 ? 'pass' : 'passes'}`;

export const TONER = {
  title: 'Toner, pass by pass',
  link: 'Tone it',
  choose: 'Which jar is the toner?',
  jar: 'Jar',
  noJar: 'Fill the toner’s jar first.',
  use: 'Tone from this jar',
  used: 'Toner chosen.',
  what: 'The toner',
  on: (count: number): string => `${passes(count)} on`,
  toGo: (full: number, half: boolean): string => {
    const parts = [...(full > 0 ? [`${full} full`] : []), ...(half ? ['one at half strength'] : [])];
    return `${full + (half ? 0.5 : 0)} to go: ${parts.join(', ')}, then read it again.`;
  },
  dose: (name: string, volume: string): string => `${name}: ${volume} in it.`,
  doseInDrops: (name: string, volume: string, drops: number): string =>
    `${name}: ${volume} in it, about ${drops} drops of this bottle.`,
  half: (each: string): string =>
    `Half strength: thin the mix 1:1 and spray one pass. ${each} of the mix and ${each} of thinner are plenty.`,
  last: 'A full pass too many cannot be taken off.',
  tooDark: 'It is darker than the target already. A toner cannot make it lighter.',
  there: (dE: string): string => `On target: ΔE00 ${dE} off.`,
  other: 'Every pass of this toner leads away from the target. Take another.',
  missing: 'Read the target, the piece before toning, and the piece again after a pass or two.',
  rows: 'Pass by pass',
  pass: 'Passes',
  colour: 'L* / a* / b*',
  difference: 'ΔE00',
  read: 'read',
  expected: 'expected',
  readTitle: 'Read a colour',
  of: 'What you read',
  ofs: {
    target: { label: 'The target', hint: 'the sound finish beside it' },
    ground: { label: 'Before toning', hint: 'the place, sealed and bare' },
    toned: { label: 'As it is now', hint: 'under the passes that are on' },
  },
  dry: 'Dry, on the piece itself. Cards stay with their match.',
  log: 'Log the reading',
  logged: 'Reading logged.',
  reading: 'The reading',
  fullPass: 'Log a full pass',
  halfPass: 'Log half a pass',
  passLogged: 'Pass logged.',
  passWhat: 'The pass',
  fade: 'Fade it out over 30–60 mm, 1–2½ in (common practice, no source).',
  lockIn: 'Lock it in with one or two clear mists before any sanding: sanding cuts the colour.',
  clamp: 'No clamp on it for 21 days.',
} as const;
