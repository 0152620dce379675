import type { Match } from '../../logbook/fold/piece/matches';
import { Icon } from '../../parts/blocks/icons';
import { Notice } from '../../parts/blocks/notice';
import { toleranceOf } from '../../shop/colour/aim';
import type { TrialSide } from '../../shop/colour/judge';
import type { KnownSurface, LeftAside } from '../../shop/colour/surface';
import { lightWords, painterWords } from '../../words/match/match';
import { STAND_WORDS as WORDS } from '../../words/match/next';
import { numberWords } from '../../words/quantities';
import { differenceText, labText, signedText } from './colour-text';
import { SplitSwatch } from './swatch';
import { VERDICT_LOOK } from './verdict-look';

interface DifferenceProps {
  readonly match: Match;
  readonly side: TrialSide;
  /** All of it: parts, lights, readings. */
  readonly isWhole?: boolean;
}

/** How a sample stands to its aim: in number, in a painter's words, and beside it. */
export function Difference({ match, side, isWhole = false }: DifferenceProps) {
  const { surface, aim, judgement, leftAside } = side;
  return (
    <div class="stack">
      {surface && aim && judgement && (
        <>
          <Headline match={match} side={side} />
          <SplitSwatch target={aim.surface.lab} sample={surface.lab} />
          {aim.clear === 'moved' && <p>{WORDS.moved(labText(aim.surface.lab))}</p>}
          {aim.yellowing > 0 && <p>{WORDS.yellowing(numberWords(aim.yellowing, 2))}</p>}
          <Cautions side={side} />
          {isWhole && <Parts side={side} />}
        </>
      )}
      {surface && isWhole && <ReadingsLine surface={surface} />}
      <AsideNotes leftAside={leftAside} match={match} />
    </div>
  );
}

function Headline({ match, side }: { readonly match: Match; readonly side: TrialSide }) {
  const { judgement, surface } = side;
  if (!judgement || !surface) return null;
  const { verdict, words } = judgement;
  const look = VERDICT_LOOK[verdict.kind];
  return (
    <div class="margin-card difference" data-kind={look.kind}>
      <p class="margin-label">
        {side.under === 'bare' ? WORDS.bare : WORDS.clear}, {labText(surface.lab)}
      </p>
      <p class="margin-value digits">
        <small>ΔE00</small> {differenceText(verdict.dE00)}
      </p>
      <p class="state" data-kind={look.kind}>
        <Icon name={look.icon} />
        {look.word}
      </p>
      <p>{painterWords(words)}</p>
      <p class="quiet small">
        {WORDS.tolerance(numberWords(toleranceOf(match), 2))}
        {'uncertaintyE00' in verdict && `, ${WORDS.uncertainty(differenceText(verdict.uncertaintyE00))}`}
      </p>
    </div>
  );
}

function Cautions({ side: { aim, judgement } }: { readonly side: TrialSide }) {
  const kind = judgement?.verdict.kind;
  return (
    <>
      {aim?.clear === 'unmoved' && kind !== 'not-yet' && (
        <Notice kind="caution">
          <p>{WORDS.unmoved}</p>
        </Notice>
      )}
      {kind === 'wet' && (
        <Notice kind="caution">
          <p>{WORDS.wetNote}</p>
        </Notice>
      )}
      {kind === 'camera-ranks-only' && (
        <Notice kind="note">
          <p>{WORDS.cameraNote}</p>
        </Notice>
      )}
    </>
  );
}

function Parts({ side: { judgement } }: { readonly side: TrialSide }) {
  if (!judgement) return null;
  const { difference, lights } = judgement;
  return (
    <>
      <dl class="facts three">
        {(['dL', 'dC', 'dH'] as const).map((part) => (
          <div key={part}>
            <dt>{WORDS.parts[part]}</dt>
            <dd class="digits">{signedText(difference[part])}</dd>
          </div>
        ))}
      </dl>
      <p class="quiet small">{WORDS.partsNote}</p>
      {lights.length === 0 ? (
        <p class="quiet small">{WORDS.oneLight}</p>
      ) : (
        <>
          <h3>{WORDS.lights}</h3>
          <dl class="facts three">
            {lights.map(({ white, dE00 }) => (
              <div key={white}>
                <dt>{WORDS.lightNames[white] ?? lightWords(white)}</dt>
                <dd class="digits">{differenceText(dE00)}</dd>
              </div>
            ))}
          </dl>
          <p class="quiet small">{WORDS.lightsNote}</p>
        </>
      )}
    </>
  );
}

/** How sure a mean is. */
export function ReadingsLine({ surface }: { readonly surface: KnownSurface }) {
  const { count, spreadE00 } = surface;
  return (
    <p class="quiet">
      {WORDS.readings(count, spreadE00 === undefined ? undefined : differenceText(spreadE00))}
    </p>
  );
}

/** What was read and does not count. */
export function AsideNotes({ leftAside, match }: { readonly leftAside: LeftAside; readonly match: Match }) {
  const { wet, camera, otherLight } = leftAside;
  const notes = [
    wet > 0 && WORDS.aside.wet(wet),
    camera > 0 && WORDS.aside.camera(camera),
    otherLight > 0 && WORDS.aside.otherLight(otherLight, lightWords(match.white)),
  ].filter((note) => note !== false);
  return notes.length === 0 ? null : <p class="quiet">{notes.join(' ')}</p>;
}
