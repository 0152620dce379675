import { lightFormat } from 'date-fns/lightFormat';
import { csvText } from '../../shop/record/csv';
import { type TableName, tableOf } from '../../shop/record/tables';
import type { ActionNeeds } from '../log';

/** A table of the shop as a CSV file. */
export async function exportTable({ logbook, now }: ActionNeeds, name: TableName): Promise<File> {
  const day = lightFormat(now(), 'yyyy-MM-dd');
  const text = csvText(tableOf(name, logbook.shop.value));
  return new File([text], `coatwait-${name}-${day}.csv`, { type: 'text/csv' });
}
