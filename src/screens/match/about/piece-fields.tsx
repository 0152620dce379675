import type { Match } from '../../../logbook/fold/piece/matches';
import { BASES } from '../../../logbook/kinds/piece/piece';
import { Choice } from '../../../parts/fields/choice';
import { named, SelectField } from '../../../parts/fields/select-field';
import { TextField } from '../../../parts/fields/text-field';
import { useShop } from '../../../parts/frame/shop-context';
import { FORM_WORDS as WORDS } from '../../../words/match/form';
import { PIECE_FORM } from '../../../words/piece/piece';
import { type FormPart, NEW_PIECE, NO_PIECE, openPieces } from './match-draft';

/** Which piece the match is for: one of the log, or one that comes into it with this. */
export function PieceFields({
  draft,
  patch,
  isTried,
  match,
}: FormPart & { readonly match: Match | undefined }) {
  const shop = useShop().shop.value;
  const own = shop.pieces.get(match?.piece ?? '');
  const pieces = [...new Set([...(own ? [own] : []), ...openPieces(shop)])];
  return (
    <>
      <SelectField
        label={WORDS.piece}
        prompt={WORDS.choosePiece}
        options={[
          ...named(pieces),
          { value: NEW_PIECE, label: WORDS.newPiece },
          { value: NO_PIECE, label: WORDS.noPiece },
        ]}
        value={draft.piece}
        onChange={(piece) => patch({ piece })}
        problem={isTried && draft.piece === undefined ? WORDS.whichPiece : undefined}
      />
      {draft.piece === NEW_PIECE && (
        <>
          <TextField
            label={WORDS.pieceName}
            hint={WORDS.pieceNameHint}
            text={draft.pieceName}
            onText={(pieceName) => patch({ pieceName })}
          />
          <div class="wide-tiles">
            <Choice
              label={PIECE_FORM.base}
              options={BASES.map((value) => ({ value, ...PIECE_FORM.bases[value] }))}
              value={draft.pieceBase}
              onChange={(pieceBase) => patch({ pieceBase })}
            />
          </div>
        </>
      )}
    </>
  );
}
