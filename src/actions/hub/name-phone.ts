import { type ActionNeeds, type Logged, log } from '../log';

/** Says what a phone of the shop is called. */
export const namePhone = (needs: ActionNeeds, phone: string, name: string): Logged<'phone-named'> =>
  log(needs, 'phone-named', { phone, name });
