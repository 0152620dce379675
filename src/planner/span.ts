/** A stretch of time, whole minutes since 1970-01-01T00:00Z; the end is not part of it. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** What is in both, in order; both lists are in order and without overlap. */
export function overlap(ones: readonly Span[], others: readonly Span[]): Span[] {
  return ones.flatMap((one) =>
    others
      .map((other) => ({ from: Math.max(one.from, other.from), to: Math.min(one.to, other.to) }))
      .filter(({ from, to }) => from < to),
  );
}

/** What is left of the spans when the taken ones are cut out of them. */
export function without(spans: readonly Span[], taken: readonly Span[]): readonly Span[] {
  return taken.reduce<readonly Span[]>(cut, spans);
}

function cut(spans: readonly Span[], taken: Span): Span[] {
  return spans.flatMap((span) =>
    [
      { from: span.from, to: Math.min(span.to, taken.from) },
      { from: Math.max(span.from, taken.to), to: span.to },
    ].filter(({ from, to }) => from < to),
  );
}

/** The same time with spans that touch or overlap made one; they come in order of their beginning. */
export function joined(spans: readonly Span[]): Span[] {
  const whole: Span[] = [];
  for (const span of spans) {
    const last = whole.at(-1);
    if (last && span.from <= last.to) whole[whole.length - 1] = { ...last, to: Math.max(last.to, span.to) };
    else whole.push(span);
  }
  return whole;
}
