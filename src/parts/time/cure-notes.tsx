import type { Outlook } from '../../actions/outlook/outlook';
import { type LawEstimate, lawOf } from '../../estimator/finishes/law-history';
import { totalFilm, totalLimitM } from '../../estimator/finishes/total-film';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { sheetOf } from '../../shop/stack/sheet-times';
import { bandMs } from '../../verdicts/moments';
import { CURE_WORDS, FINISH_WORDS, SHEET_WORDS } from '../../words/air/finishes';
import { filmWords } from '../../words/quantities';
import { bandWords } from '../../words/times';
import { Notice } from '../blocks/notice';
import { useShop, useUnits } from '../frame/shop-context';
import { BandTime } from './band-time';

interface CureNotesProps {
  readonly piece: Piece;
  readonly outlook: Outlook | undefined;
  /** Only what speaks against another coat now. */
  readonly isWarningOnly?: boolean | undefined;
}

/** What a finish that cures has besides its moments: the end of its window, its limit of film, and where its times are from. */
export function CureNotes({ piece, outlook, isWarningOnly }: CureNotesProps) {
  const { shop } = useShop();
  const newest = piece.coats.findLast(({ how }) => how !== 'flash');
  const sheet = newest && sheetOf(newest.jar, shop.value);
  if (!newest || outlook?.state !== 'ready') return null;
  const law = lawOf(outlook.estimate);
  return (
    <>
      {law && <Film law={law} sheetM={sheet?.totalFilm?.si} />}
      {law?.recoatUntil && (
        <Window startMs={outlook.startMs} until={law.recoatUntil} isWarningOnly={isWarningOnly} />
      )}
      {law && !isWarningOnly && <LightUse startMs={outlook.startMs} band={law.lightUse} />}
      {law?.wasTooCold && (
        <Notice kind="stop">
          <p>{CURE_WORDS.tooCold}</p>
        </Notice>
      )}
      {!isWarningOnly && sheet && <p class="quiet small">{SHEET_WORDS.scaled}</p>}
      {!isWarningOnly && law && !sheet && <p class="quiet small">{CURE_WORDS.byLaw}</p>}
    </>
  );
}

/** When it may be used with care, long before its full cure. */
function LightUse({
  startMs,
  band,
}: {
  readonly startMs: number;
  readonly band: LawEstimate['law']['lightUse'];
}) {
  const nowMs = useShop().nowMs.value;
  return <BandTime label={FINISH_WORDS.lightUse} {...bandWords(bandMs(startMs, band), nowMs)} size="row" />;
}

interface WindowProps {
  readonly startMs: number;
  readonly until: NonNullable<LawEstimate['law']['recoatUntil']>;
  readonly isWarningOnly?: boolean | undefined;
}

function Window({ startMs, until, isWarningOnly }: WindowProps) {
  const nowMs = useShop().nowMs.value;
  const band = bandMs(startMs, until);
  if (nowMs >= band.likelyMs)
    return (
      <Notice kind="caution">
        <p>{CURE_WORDS.windowOver}</p>
      </Notice>
    );
  return isWarningOnly ? null : (
    <BandTime label={CURE_WORDS.windowUntil} {...bandWords(band, nowMs)} size="row" />
  );
}

function Film({ law, sheetM }: { readonly law: LawEstimate['law']; readonly sheetM: number | undefined }) {
  const units = useUnits();
  const limitM = totalLimitM(law.finish, sheetM);
  if (limitM === undefined) return null;
  const state = totalFilm(law.totalDryM, limitM);
  if (state === 'within') return null;
  return (
    <Notice kind={state === 'over' ? 'stop' : 'caution'}>
      <p>{CURE_WORDS.total(filmWords(law.totalDryM, units), filmWords(limitM, units))}</p>
      <p>{CURE_WORDS[state]}</p>
    </Notice>
  );
}
