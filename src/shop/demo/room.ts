import { DEMO_FILTER } from '../../words/demo';
import type { Pen } from './pen';

/** The booth of the demo as its fan was measured, and the cartridge that was worn for the coats of the last days. */
export function fitOutRoom(pen: Pen): void {
  pen.write(
    {
      kind: 'room-described',
      volume: { text: '40', unit: 'm3' },
      airFlow: { text: '1800', unit: 'm3/h' },
      flowFrom: 'measured',
      mixing: { text: '3', unit: 'ratio' },
    },
    pen.daysAgo(14, 8, 5),
  );
  const filter = pen.newId();
  pen.write(
    {
      kind: 'filter-opened',
      filter,
      part: 'cartridge',
      ...DEMO_FILTER,
      wear: { text: '8', unit: 'h' },
      open: { text: '30', unit: 'd' },
    },
    pen.daysAgo(14, 8, 10),
  );
  for (const days of WORN_DAYS_AGO) {
    pen.write(
      { kind: 'spraying-ended', lasted: { text: '40', unit: 'min' }, filters: [filter] },
      pen.daysAgo(days, 14, 30),
    );
    pen.write(
      { kind: 'cautions-read', act: 'end-day', cautions: ['rags', 'overspray'] },
      pen.daysAgo(days, 17, 30),
    );
  }
}

const WORN_DAYS_AGO = [13, 12, 11, 10, 6, 5, 1];
