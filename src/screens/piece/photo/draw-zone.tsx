import { useSignal } from '@preact/signals';
import { drawZone } from '../../../actions/photo/take-photo';
import type { Photo, Zone } from '../../../logbook/fold/piece/zones';
import { Button } from '../../../parts/blocks/button';
import { Problem } from '../../../parts/fields/choice';
import { useForm } from '../../../parts/fields/form/use-form';
import { SelectField } from '../../../parts/fields/select-field';
import { useShop } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import { OutlinedPhoto } from '../../../parts/photo/outlined-photo';
import { crosses, type OutlinePoint, thinned, within } from '../../../science/outline';
import { PHOTO_WORDS as WORDS } from '../../../words/piece/photo';
import { Save } from './save';

interface DrawZoneProps {
  readonly photo: Photo;
  readonly zones: readonly Zone[];
}

const MIDDLE: readonly OutlinePoint[] = [
  [0.4, 0.4],
  [0.6, 0.4],
  [0.6, 0.6],
  [0.4, 0.6],
];
const STEP = 0.02;
type Nudge = keyof typeof WORDS.nudge;

/** Draws a place on a photo with a finger, or with a frame that is moved by keys. */
export function DrawZone({ photo, zones }: DrawZoneProps) {
  const { needs, actions } = useShop();
  const form = useForm();
  const zoneId = useSignal(zones[0]?.zoneId ?? '');
  const outline = useSignal<readonly OutlinePoint[]>([]);
  const isDrawing = useSignal(false);
  const zone = zones.find((one) => one.zoneId === zoneId.value);
  const { points, isCut } = within(outline.value);
  const problem = isDrawing.value ? undefined : problemOf(points);

  const place = (event: PointerEvent & { currentTarget: Element }): OutlinePoint => {
    const box = event.currentTarget.getBoundingClientRect();
    return [(event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height];
  };

  async function save(): Promise<void> {
    const said = { piece: photo.piece, zoneId: zoneId.value, photo: photo.photo, outline: [...points] };
    const kept = await form.send(true, () => drawZone(needs, said));
    if (!kept) return;
    outline.value = [];
    sayLogged(actions, kept.id, WORDS.drawnWhat, WORDS.drawn(zone?.name ?? ''));
  }

  return (
    <>
      <SelectField
        label={WORDS.place}
        options={zones.map(({ zoneId: value, name }, i) => ({ value, label: `${i + 1}. ${name}` }))}
        value={zoneId.value}
        onChange={(value) => {
          zoneId.value = value;
        }}
      />
      <p class="quiet">{WORDS.drawHint}</p>
      <div
        class="drawable"
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          isDrawing.value = true;
          outline.value = [place(event)];
        }}
        onPointerMove={(event) => {
          if (isDrawing.value) outline.value = [...outline.value, place(event)];
        }}
        onPointerUp={() => {
          isDrawing.value = false;
          outline.value = thinned(outline.value);
        }}
      >
        <OutlinedPhoto
          id={photo.photo}
          describe={WORDS.draw}
          width={photo.width}
          height={photo.height}
          zones={[{ number: 0, outline: points }]}
        />
      </div>
      <div class="acts">
        <Button
          onClick={() => {
            outline.value = MIDDLE;
          }}
        >
          {WORDS.frame}
        </Button>
      </div>
      {outline.value.length > 0 && (
        <>
          {isCut && <p>{WORDS.cut}</p>}
          <Problem id="outline-problem" text={problem} />
          <Nudges
            onNudge={(how) => {
              outline.value = nudged(points, how);
            }}
          />
          <Save form={form} onSave={save} disabled={problem !== undefined}>
            {WORDS.saveOutline}
          </Save>
        </>
      )}
    </>
  );
}

function problemOf(points: readonly OutlinePoint[]): string | undefined {
  if (points.length === 0) return undefined;
  if (points.length < 3) return WORDS.tooFew;
  return crosses(points) ? WORDS.crosses : undefined;
}

const Nudges = ({ onNudge }: { readonly onNudge: (how: Nudge) => void }) => (
  <div class="acts nudges">
    {(Object.keys(WORDS.nudge) as Nudge[]).map((how) => (
      <Button key={how} onClick={() => onNudge(how)}>
        {WORDS.nudge[how]}
      </Button>
    ))}
  </div>
);

const MOVES = { left: [-STEP, 0], right: [STEP, 0], up: [0, -STEP], down: [0, STEP] } as const;

/** The outline moved a little, or made larger or smaller about its middle. */
function nudged(points: readonly OutlinePoint[], how: Nudge): readonly OutlinePoint[] {
  if (how !== 'larger' && how !== 'smaller') {
    const [dx, dy] = MOVES[how];
    return points.map(([x, y]) => [x + dx, y + dy]);
  }
  const factor = how === 'larger' ? 1.1 : 1 / 1.1;
  const mean = (i: 0 | 1): number => points.reduce((sum, point) => sum + point[i], 0) / points.length;
  const [mx, my] = [mean(0), mean(1)];
  return points.map(([x, y]) => [mx + (x - mx) * factor, my + (y - my) * factor]);
}
