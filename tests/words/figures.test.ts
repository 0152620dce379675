import { expect, test } from 'vitest';
import { WHAT_IF } from '../../src/actions/outlook/what-if';
import { MOST_PHOTO_BYTES } from '../../src/logbook/picture/outline';
import { LATER_MINUTES } from '../../src/reminders/due';
import { WINDOW_AHEAD } from '../../src/reminders/plan-reminders';
import { TOLERANCE_E00 } from '../../src/science/colour/verdict';
import { LACQUER_A_SPRAY_CAN_M3 } from '../../src/science/film/containers';
import { POT_LIFE_AT_K } from '../../src/science/mixing/pot-life';
import { toCelsius } from '../../src/units';
import { MATCH_WORDS } from '../../src/words/match/match';
import { PHOTO_FAULTS } from '../../src/words/match/photo';
import { JAR_FORM } from '../../src/words/mix/jar';
import { AMOUNT_WORDS } from '../../src/words/mix/tools';
import { MOVES_WORDS } from '../../src/words/piece/why';
import {
  ABILITY_WORDS,
  ANSWER_WORDS,
  REMINDER_KIND_WORDS,
  REMINDER_PAGE,
} from '../../src/words/plan/reminders';

const { placeHints } = MATCH_WORDS;
const later = `${LATER_MINUTES} min`;

// Texts are the ground that all stands on: they cannot look a number up, so it stands in them again, and is held here.
test.each([
  [placeHints['open-panel'], `ΔE00 ${TOLERANCE_E00['open-panel']}:`],
  [placeHints.edge, `ΔE00 ${TOLERANCE_E00.edge}:`],
  [placeHints.hidden, `ΔE00 ${TOLERANCE_E00.hidden}:`],
  [ANSWER_WORDS.later, `${later} later`],
  [REMINDER_PAGE.later, `${later} later`],
  [REMINDER_PAGE.putOff('Next coat'), `again in ${later}.`],
  [ABILITY_WORDS.answers.yes, `${later} later`],
  [REMINDER_KIND_WORDS['window-closing'], `: ${WINDOW_AHEAD.join(', ')} min left`],
  [PHOTO_FAULTS['too-many-bytes'], `over ${MOST_PHOTO_BYTES / 1e6} megabytes`],
  [MOVES_WORDS.names.warmer, `${WHAT_IF.byK} °C (${WHAT_IF.byK * 1.8} °F) warmer`],
  [MOVES_WORDS.names.cooler, `${WHAT_IF.byK} °C (${WHAT_IF.byK * 1.8} °F) colder`],
  [JAR_FORM.life.pot('metric'), `at ${toCelsius(POT_LIFE_AT_K)} °C`],
  [AMOUNT_WORDS.sprayCanText, `About ${LACQUER_A_SPRAY_CAN_M3 * 1e6} mL`],
])('"%s" says the figure that the app goes by', (text, figure) => {
  expect(text).toContain(figure);
});
