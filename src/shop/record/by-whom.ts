import type { Shop } from '../../logbook/fold/fold';
import { markOf } from '../../logbook/ids/phone-mark';

/** The name of the phone that logged an entry, where more than one has a name. */
export const byWhom = (id: string, { phones }: Pick<Shop, 'phones'>): string | undefined =>
  phones.size > 1 ? phones.get(markOf(id)) : undefined;
