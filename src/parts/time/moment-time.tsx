import type { Moment } from '../../verdicts/moments';
import { momentWords } from '../../words/piece/moments';
import { bandWords } from '../../words/times';
import { BandTime, type BandTimeProps } from './band-time';

export interface MomentTimeProps {
  readonly moment: Moment;
  readonly nowMs: number;
  readonly size?: BandTimeProps['size'];
  /** Said in place of the moment's own words. */
  readonly label?: string | undefined;
}

/** A moment with its band: "Recoat from 14:20 (14:05–14:50)". */
export const MomentTime = ({ moment, nowMs, size, label }: MomentTimeProps) => (
  <BandTime label={label ?? momentWords(moment, nowMs)} size={size} {...bandWords(moment, nowMs)} />
);
