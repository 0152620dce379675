// Every form of the app, how it is reached in the demo shop, and what it refuses. What a number field refuses is walked by itself.

export interface AForm {
  readonly file: string;
  /** Its address, or the links that lead to it one from another: each is the first on its page that fits. */
  readonly at: string | readonly [from: string, ...links: readonly RegExp[]];
  /** Walked in the own shop: the demo shop has none. */
  readonly isOwn?: boolean;
  /** Filled or chosen in the form: what else must be there for the rest to be looked at. */
  readonly fills?: Readonly<Record<string, string>>;
  /** Tapped then: where the form stands only after it. */
  readonly taps?: readonly (string | RegExp)[];
  /** The button that sends it, or how its words begin. */
  readonly send: string;
  /** Fields that must not be empty, and questions that must be answered. */
  readonly filled?: readonly string[];
  readonly answered?: readonly string[];
}

const PIECE = /^#\/piece\/[^/?]+$/;
const JAR = /^#\/mix\/jar\/(?!new)[^/?]+$/;
const MATCH = /^#\/match\/(?!new)[^/?]+$/;
const PLAN = /^#\/plan\/[0-9a-f-]{36}$/;

const ZONE = /\/zone\/(?!new)[^/]+$/;
const RECIPE = /^#\/mix\/recipe\/(?!new)[^/?]+$/;
const LAB = { 'L*': '86', 'a*': '0', 'b*': '12' };

export const FORMS: readonly AForm[] = [
  { file: 'lay/lay-form.tsx', at: '#/lay', taps: ['Read and done'], send: 'Log it' },
  { file: 'piece/start/start-page.tsx', at: '#/piece/new', send: 'Start this piece', filled: ['Name'] },
  {
    file: 'piece/start/change-page.tsx',
    at: ['#/bench', PIECE, /\/change$/],
    send: 'Save',
    filled: ['Name'],
  },
  {
    file: 'piece/sanding/check-page.tsx',
    at: ['#/bench', PIECE, /\/check$/],
    send: 'Log it',
    answered: ['What you found'],
  },
  {
    file: 'piece/ground/ground-page.tsx',
    at: ['#/bench', PIECE, /\/ground$/],
    send: 'Log it',
    answered: ['What you put on'],
  },
  { file: 'piece/sanding/sand-page.tsx', at: ['#/bench', PIECE, /\/sand$/], send: 'Log it' },
  {
    file: 'parts/kept/correction-form.tsx',
    at: ['#/bench', PIECE, /\/correct\//],
    send: 'Save the correction',
    filled: ['Day and time'],
  },
  {
    file: 'piece/zone/zone-form.tsx',
    at: ['#/bench', PIECE, /\/zone\/new$/],
    send: 'Save',
    filled: ['Name'],
  },
  {
    file: 'piece/zone/read-toner.tsx',
    at: ['#/bench', PIECE, ZONE, /\/toner\?/],
    taps: ['Tone from this jar'],
    fills: LAB,
    send: 'Log the reading',
  },
  {
    file: 'piece/old-finish/drop-form.tsx',
    at: ['#/bench', PIECE, /\/old$/],
    send: 'Log the drop',
    answered: ['What happened'],
  },
  {
    file: 'piece/old-finish/look-form.tsx',
    at: ['#/bench', PIECE, /\/old$/],
    send: 'Save',
    answered: ['The old finish is'],
  },
  {
    file: 'piece/old-finish/lead-form.tsx',
    at: ['#/bench', PIECE, /\/old$/],
    send: 'Log it',
    answered: ['What is known'],
  },
  {
    file: 'piece/record/words-page.tsx',
    at: ['#/bench', PIECE, /\/record$/, /\/words$/],
    send: 'Save the note',
    filled: ['Note'],
  },
  { file: 'mix/ingredient/edit-ingredient.tsx', at: '#/mix/ingredient/new', send: 'Save', filled: ['Name'] },
  {
    file: 'mix/recipe/edit-recipe.tsx',
    at: '#/mix/recipe/new',
    fills: { 'Ingredient 1': '1' },
    send: 'Save the recipe',
    filled: ['Name of the recipe'],
  },
  { file: 'mix/jar/new-jar.tsx', at: '#/mix/jar/new', send: 'Fill the jar', filled: ['Name of the jar'] },
  { file: 'mix/jar/left-forms.tsx', at: ['#/mix', JAR], send: 'Log it' },
  { file: 'mix/find/find-jar.tsx', at: '#/mix/find', send: 'Find it', filled: ['Code on the label'] },
  { file: 'mix/weigh/plan-page.tsx', at: ['#/mix', RECIPE, /weigh\/new/], send: 'Begin to pour' },
  {
    file: 'mix/weigh/next-pour.tsx',
    at: ['#/mix', RECIPE, /weigh\/new/],
    taps: ['Begin to pour'],
    send: 'Log what was poured',
  },
  {
    file: 'match/about/match-form.tsx',
    at: '#/match/new',
    fills: { Piece: '1' },
    send: 'Start the match',
    filled: ['Name'],
  },
  {
    file: 'match/reading/read-page.tsx',
    at: ['#/match', MATCH, /\/read\/trial\//],
    fills: LAB,
    send: 'Log the reading',
  },
  { file: 'match/trial/mix-page.tsx', at: ['#/match', MATCH, /\/mix\b/], send: 'Log this trial' },
  {
    file: 'match/hiding/hiding-form.tsx',
    at: ['#/match', MATCH, /\/hiding$/],
    fills: { 'Dry film of the draw-down': '30', 'Card, bare': '4', Coated: '60' },
    send: 'Log the draw-down',
  },
  {
    file: 'match/trial/trial-jar-page.tsx',
    at: ['#/match', MATCH, /\/trial\//],
    taps: ['Accept this trial'],
    send: 'Save the jar',
  },
  {
    file: 'air/read.tsx',
    at: '#/air/read',
    fills: { 'Air temperature': '21', Humidity: '50' },
    send: 'Log the reading',
  },
  { file: 'air/forecast.tsx', at: '#/air/forecast', send: 'Set the forecast' },
  { file: 'air/room/room-form.tsx', at: '#/air/room-form', send: 'Save the room' },
  { file: 'air/room/filter-form.tsx', at: '#/air/filter-form', send: 'Put it in use', filled: ['Name'] },
  { file: 'air/room/ended.tsx', at: '#/air/ended', send: 'Log it' },
  { file: 'air/finish/sheet.tsx', at: ['#/air/finishes', /\/sheet\//], send: 'Save the sheet' },
  {
    file: 'parts/kept/correction-form.tsx',
    at: ['#/air/readings', /\/correct\//],
    send: 'Save the correction',
    filled: ['Day and time'],
  },
  {
    file: 'plan/start-plan-page.tsx',
    at: ['#/plan', PLAN, /\/start$/],
    send: 'Make the plan',
    answered: ['Job'],
  },
  { file: 'plan/hours/hours-page.tsx', at: '#/plan/hours', send: 'Save the week', filled: ['Monday, from'] },
  { file: 'plan/hours/closures.tsx', at: '#/plan/hours', send: 'Add it', filled: ['Begins'] },
  {
    file: 'plan/reminders/quiet-hours.tsx',
    at: '#/plan/reminders',
    taps: ['Quiet hours on'],
    send: 'Save',
    filled: ['From'],
  },
  {
    file: 'plan/promise/promise-section.tsx',
    at: ['#/plan', PLAN],
    send: 'Promise this date',
    filled: ['Promised date'],
  },
  { file: 'plan/steps/step-form.tsx', at: ['#/plan', PLAN], send: 'Save' },
  { file: 'more/kept-setting.tsx', at: '#/more', send: 'Save' },
  { file: 'more/card/new-card.tsx', at: ['#/bench', PIECE, /cards\/new/], send: 'Make the card' },
  {
    file: 'more/hub/join-form.tsx',
    isOwn: true,
    at: '#/more/hub',
    send: 'Continue',
    filled: ['Code or link'],
  },
];
