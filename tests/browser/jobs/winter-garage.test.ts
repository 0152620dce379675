import { test } from 'vitest';
import { goTo } from '../app';
import { button, choose, field, said, section, unfold } from '../on-screen';
import {
  closeToast,
  fillJar,
  logCheck,
  logCoat,
  openAt,
  pass,
  plan,
  readAir,
  startPiece,
  tellsNoneOf,
  toCoat,
} from './judged-shop';

test('a winter garage: days in the cold count for half, a print holds the rubbing out and the promise', async () => {
  await openAt('2026-01-09T09:00:00+01:00');
  await readAir('12', '50');
  await fillJar(/^Spray can/, 'Clear spray can');
  const piece = await startPiece('Garage guitar', /^Sealed wood/);
  await toCoat(piece);
  await said('12 °C is too cold for this finish: it needs 15 °C or warmer.').waitFor();
  await logCoat(piece);
  await closeToast();
  await pass(10);
  await readAir('21', '50');
  await goTo(`#/piece/${piece}/why`);
  await unfold('What these times mean');
  await said('Hardness is judged for a room of 21 °C').waitFor();
  await said('10 days in this shop count as 5.4 (4.6–5.9) at 21 °C').waitFor();
  await said(/^.*21 such days end about (3|4) Feb/).waitFor(); // 15.6 more from 19 January, 09:00
  await goTo(`#/piece/${piece}/sand`, /sand/i);
  await choose(/^Rub out/);
  await said('It stood at 12 °C. Warm it gradually').waitFor();
  await said('a heavy build takes 28 to 60 days').waitFor();
  await pass(16);
  await said('a thumb, then paper. Or weigh it twice, 48 h apart').waitFor();
  await plan(piece, /^The coats are on already/);
  await logCheck(piece, /^Thumb/, 'Leaves a print');
  await said(/^Held/).waitFor();
  await said('Give it a week and try again, from about 11 Feb').waitFor();
  await goTo(`#/plan/${piece}`);
  await said('No date to promise while something is held').waitFor();
  await section('Steps').getByText('Held: level-sanding').waitFor();
  await goTo('#/plan/reminders', 'Reminders');
  await tellsNoneOf(/^(Level-sand|Rub out): Garage guitar/);
  await pass(7);
  await logCheck(piece, /^Thumb/, 'Leaves no print');
  await goTo(`#/plan/${piece}`);
  await said('Earliest date to promise').waitFor();
  await goTo('#/air/forecast');
  await field('By day').fill('12');
  await field('By night').fill('-3');
  await button('Set the forecast').tap();
  await closeToast();
  for (const stage of [/^Level/, /^Rub out/]) {
    await goTo(`#/piece/${piece}/sand`, /sand/i);
    await choose(stage);
    await button('Log it').tap();
    await closeToast();
  }
  await goTo(`#/piece/${piece}`, 'Garage guitar');
  await said(
    'Ship it only above freezing, or insulated; leave it in its closed case for 12 to 24 h',
  ).waitFor();
  await goTo(`#/piece/${piece}/record`, 'Treatment record');
  await said('No stand or strap of rubber or vinyl for 6 months').waitFor();
  await said('Still in work: Ready to hand over').waitFor();
});
