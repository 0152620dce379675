import { generate } from 'lean-qr';

const QUIET_ZONE = 4;

/** A QR code as squares of a drawing: no picture is fetched or encoded. */
export function QrCode({ text, describe }: { readonly text: string; readonly describe: string }) {
  const code = generate(text);
  const squares: string[] = [];
  for (let y = 0; y < code.size; y++)
    for (let x = 0; x < code.size; x++)
      if (code.get(x, y)) squares.push(`M${x + QUIET_ZONE} ${y + QUIET_ZONE}h1v1h-1z`);
  const side = code.size + 2 * QUIET_ZONE;
  return (
    <svg
      class="qr"
      viewBox={`0 0 ${side} ${side}`}
      role="img"
      aria-label={describe}
      shape-rendering="crispEdges"
    >
      <rect width={side} height={side} fill="#fff" />
      <path d={squares.join('')} fill="#000" />
    </svg>
  );
}
