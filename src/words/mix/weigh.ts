// English text of the weigh-up: its plan, its pours, the jar it becomes.

const grams = (g: number): string => `${Number(g.toFixed(3))} g`;

export const PLAN_WORDS = {
  title: 'Weigh up',
  howMuch: 'How much to mix',
  job: (coats: number, piece: string | undefined): string =>
    `${coats} ${coats === 1 ? 'coat' : 'coats'}${piece === undefined ? '' : ` on ${piece}`}`,
  notEnough: (wanted: string, job: string): string => `${wanted} is not enough for ${job}`,
  takes: (laid: string, whole: string, isByGun: boolean): string => {
    const used = `About ${laid} ${isByGun ? 'is sprayed' : 'goes on'}`;
    const more = isByGun ? 'what stays in the gun and what is kept back' : 'what is kept back';
    return `${used}${laid === whole ? '' : `, ${whole} with ${more}`}. Mix it in one go, so that the colour stays the same.`;
  },
  enough: (job: string, need: string): string => `Enough for ${job}: it takes about ${need}.`,
  need: (job: string, need: string): string => `It takes about ${need} for ${job}.`,
  forPiece: 'For which piece',
  choosePiece: 'Choose the piece',
  changeJob: 'Change area, coats or film',
  takeNeed: (need: string): string => `Make ${need}`,
  noJob: 'Work out what the job takes first',
  scale: 'Your scale',
  division: 'It shows steps of',
  divisions: { '0.001': '0.001 g', '0.01': '0.01 g', '0.1': '0.1 g', '1': '1 g' },
  taring: 'Between ingredients',
  running: { label: 'Leave it', hint: 'the scale shows the running total' },
  tared: { label: 'Tare it', hint: 'set to zero each time' },
  lines: 'In this order',
  drops: (drops: string): string => `about ${drops} ${drops === '1' ? 'drop' : 'drops'} of this bottle`,
  wholeDrops: (drops: number, error: string): string => `${drops} drops of this bottle would be ${error}`,
  coarse: (error: string): string => `This scale is ${error} uncertain here.`,
  notWeighable: 'This scale cannot weigh so little.',
  letDown: (percent: string, grams: string, out: string, of: string): string =>
    `Use a ${percent} let-down: weigh ${grams} g of it, and leave out ${out} g of ${of}.`,
  letDownOn: 'With the let-down',
  letDownOff: 'Without it',
  clearShort: (clear: string, there: string): string =>
    `A let-down that weighs well brings ${clear} g of clear; the recipe has ${there} g to leave out. `,
  larger: 'Mix a larger batch, or use a finer scale.',
  factor: (factor: string): string =>
    factor === '1' ? 'The recipe as written' : `${factor} times the recipe as written`,
  makeLetDown: (name: string): string =>
    `${name} is not in the shop yet. Mix some first: it is added to the ingredients.`,
  takeValues: 'Use these values',
  begin: 'Begin to pour',
  cautions: 'Before you mix',
} as const;

export const WEIGH_WORDS = {
  title: 'Weigh-up',
  pourNow: (name: string): string => `Pour ${name}`,
  topUp: (name: string): string => `Top up ${name}`,
  until: 'until the scale shows',
  addsUp: (grams: string, volume: string | undefined): string =>
    `${grams} g of it${volume === undefined ? '' : `, about ${volume}`}`,
  inVessel: (grams: string): string => `In the cup so far: ${grams} g`,
  taredNow: 'Set the scale to zero first.',
  shows: 'The scale shows now',
  showsHint: 'What it really shows, over or under.',
  exact: (grams: string): string => `Exactly ${grams} g`,
  poured: 'Log what was poured',
  lessThanBefore: (g: number): string =>
    `The scale showed ${grams(g)} before this pour. Enter what it shows now, with everything in the cup.`,
  over: (name: string, error: string): string => `${name} is over by ${error}`,
  grown: (factor: string, more: string): string =>
    `What is still to come grows with it: the batch becomes ${factor} times as large, ${more} g more.`,
  topUps: 'What was poured before is topped up at the end.',
  progress: (done: number, all: number): string => `${done} of ${all} poured`,
  list: 'The batch',
  toCome: 'to come',
  of: (poured: string, planned: string): string => `${poured} of ${planned} g`,
  undo: 'Undo the last pour',
  undone: 'The last pour is undone.',
  done: 'Everything is poured',
  doneText: (grams: string): string =>
    `${grams} g in the cup, in the recipe’s ratio. Stir, strain, then fill the jar.`,
  fill: 'Fill the jar',
  jarName: 'Name of the jar',
  keepBack: 'Keep back for repairs',
  keepBackHint: 'Usual 10 to 15 %.',
  drop: 'Abandon this weigh-up',
  dropped: 'Weigh-up abandoned.',
  later: 'Every pour is kept. Leave whenever you like and go on from here.',
  over2: 'This weigh-up is finished.',
  toJar: 'To its jar',
  given: 'This weigh-up was abandoned.',
  open: 'Weigh-ups not finished',
  noted: (name: string): string => `${name} logged.`,
  overtaken: (name: string): string => `${name} was poured in another window`,
  notNoted: (typed: string): string => `What you typed here for it, ${typed} g, was not logged.`,
} as const;
