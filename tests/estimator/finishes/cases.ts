import type { Milestone } from '../../../src/estimator/estimate';
import { type CuringFinish, FINISH_LAWS, type FinishLaw } from '../../../src/estimator/finishes/finish-law';
import type { LawEstimate, LawRequest, SheetTimes } from '../../../src/estimator/finishes/law-history';

export const CURING = [
  'waterborne',
  'precatalysed',
  'conversion',
  'urethane',
] as const satisfies CuringFinish[];
export const law = (finish: CuringFinish): FinishLaw => FINISH_LAWS[finish];

interface Piece {
  readonly temperatureK?: number;
  readonly relativeHumidity?: number;
  readonly dryM?: number;
  readonly sheet?: SheetTimes;
}

/** One coat at the start, in steady air of 21 °C and 50 % unless told otherwise. */
export const onePiece = ({
  temperatureK = 294.15,
  relativeHumidity = 0.5,
  dryM = 20e-6,
  sheet,
}: Piece): LawRequest => ({
  history: {
    coats: [{ atS: 0, dryM, volatileM: 2 * dryM }],
    sandings: [],
    air: [{ fromS: 0, temperatureK, relativeHumidity }],
    sandingK: 294.15,
    ...(sheet && { sheet }),
  },
  nowS: 3600,
});

export const hoursTo = ({ milestones }: LawEstimate, name: Milestone) => ({
  likely: milestones[name].likelyS / 3600,
});

/** An invented sheet. */
export const SHEET_AT_20 = {
  temperatureK: 293.15,
  relativeHumidity: 0.5,
  touchS: 25 * 60,
  recoatFromS: 100 * 60,
  recoatUntilS: 8 * 3600,
  sandS: 20 * 3600,
  curedS: 9 * 86_400,
} as const;
