import { goTo, page } from '../app';
import { button, field } from '../on-screen';

export const go = (place: string, title: string): Promise<void> => goTo(`#/${place}`, title);

export const main = () => page.locator('main');

export const closeToast = () => button('Close this message').tap();

export async function readAir(airC: string, humidity: string, pieceC?: string): Promise<void> {
  await go('air/read', 'Take a reading');
  await field('Air temperature').fill(airC);
  await field('Humidity').fill(humidity);
  if (pieceC !== undefined) await field('Piece temperature').fill(pieceC);
  await button('Log the reading').tap();
  await page.getByText('Above the dew point', { exact: true }).waitFor();
  await closeToast();
}
